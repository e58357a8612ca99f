import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import type { Client, TestCompany } from './test-company.js';
import { makePhoto } from './test-uploads.js';

/** One of everything that a company can have, by the name of its path: `customers`, `quotes`, … */
export type World = Readonly<Record<string, string>>;

type Bodies = Readonly<Record<string, object>>;

/** A good body for every route that makes or does something, by its path; ids are those of the world given. */
export function bodiesFor(world: World): Bodies {
  const id = (name: string): string => world[name] ?? uuidv7();
  const money = (amount: string): object => ({ amount, currency: 'USD' });
  return {
    '/v1/people': { name: 'New Person', email: `new-${uuidv7()}@fernhollow.example`, role: 'crew', hourlyWage: '21.77', burdenPercent: '20' },
    '/v1/people/{id}/password': { password: 'a sentence that nobody else has' },
    '/v1/device-enrolments': { personId: id('people') },
    '/v1/devices/{id}/revoke': { reason: 'Lost at the quarry.' },
    '/v1/customers': { name: 'Marta Ellingsworth' },
    '/v1/sites': { customerId: id('customers'), address: '4 Osier Court', timeZone: 'America/Detroit' },
    '/v1/features': { siteId: id('sites'), kind: 'pond', name: 'Lower pond' },
    '/v1/equipment': { featureId: id('features'), kind: 'pump', make: 'Invented', model: 'P 40' },
    '/v1/surveys': {
      featureId: id('features'),
      surveyedOn: '2026-05-04',
      outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } },
      probes: { unit: 'in', readings: [{ toSediment: 18, toBottom: 27 }, { toSediment: 20, toBottom: 30 }, { toSediment: 22, toBottom: 30 }, { toSediment: 16, toBottom: 25 }] },
      accessFactor: '1.15',
      depthProfile: [{ distance: { value: 0, unit: 'ft' }, depth: { value: 0, unit: 'in' } }, { distance: { value: 4, unit: 'ft' }, depth: { value: 30, unit: 'in' } }],
      pipeRun: { pipes: [{ side: 'discharge', length: { value: 60, unit: 'ft' }, innerDiameter: { value: 2.067, unit: 'in' }, fittings: [{ kind: 'elbow-90', count: 4 }] }], staticLift: { value: 8, unit: 'ft' } },
      equipmentCondition: [{ equipmentId: id('equipment'), condition: 'Bearing loud', works: 'yes' }],
      reclaimedMaterials: [{ kind: 'stone', quantity: { value: 2.5, unit: 'ton' }, note: 'Behind the shed' }],
      waterTests: [{ takenAt: '2026-05-04T09:30:00-04:00', temperature: { value: 62, unit: 'degF' }, ph: 7.8, totalAmmoniaMgPerL: 0.25 }],
    },
    '/v1/surveys/{id}/proposal': { scope: ['clean-out', 'edge'] },
    '/v1/labor-rules': { costCode: 'cleanout', name: 'Clean-out by hand', quantity: 'sedimentVolume', unit: 'yd3', setupHours: '3', hoursPerUnit: '1.75', minimumHours: '6', effectiveFrom: '2026-01-01' },
    '/v1/work-week-policies': { startsOn: 'monday', startsAt: '00:00', weeklyOvertimeHours: '40', effectiveFrom: '2026-01-01' },
    '/v1/burden-rates': { code: 'insurance', name: 'Insurance by payroll', percent: '6.5', yearlyWageCap: '9000.00', base: 'straight-pay', effectiveFrom: '2026-01-01' },
    '/v1/opening-wages': { personId: id('people'), through: '2026-03-31', allPay: money('6500.00') },
    '/v1/parts': { sku: `PUMP-${uuidv7()}`, name: 'Pump', unit: 'each', unitCost: money('412.35'), markupPercent: '35', packSize: '1', taxCategory: 'materials', attributes: { kind: 'pump', powerWatts: 320 } },
    '/v1/quotes': {
      surveyId: id('surveys'),
      title: 'Bring the lower pond back',
      labor: [{ costCode: 'cleanout', ruleId: id('labor-rules') }],
      parts: [{ partId: id('parts'), quantity: '1', costCode: 'filtration' }],
      other: [{ description: 'Skip hire', quantity: '1', unitPrice: money('300.00'), unitCost: money('240.00'), taxCategory: null, costCode: 'hauling' }],
    },
    '/v1/quotes/{id}/issue': {},
    '/v1/quotes/{id}/revisions': {},
    '/v1/quotes/{id}/acceptance': { acceptedBy: 'Marta Ellingsworth', acceptedOn: new Date().toISOString().slice(0, 10) },
    '/v1/jobs/{id}/start': {},
    '/v1/jobs/{id}/finish': {},
    '/v1/jobs/{id}/reopen': {},
    '/v1/jobs/{id}/cancel': { reason: 'The customer sold the house.' },
    '/v1/time-entries': { jobId: id('jobs'), personId: id('people'), costCode: 'cleanout', startedAt: '2026-05-11T08:00:00-04:00', endedAt: '2026-05-11T12:00:00-04:00', unpaidBreakMinutes: 15 },
    // Wrong as a whole: of a good one each item has an outcome of its own, in an answer that is 200 whatever they name.
    '/v1/time-entries/batch': { items: [] },
    '/v1/time-entries/{id}/stop': {},
    '/v1/time-entries/{id}/release': {},
    '/v1/time-entries/{id}/void': { reason: 'Entered twice.' },
    '/v1/time-approvals': { personId: id('people'), day: '2026-05-11' },
    '/v1/time-approvals/withdraw': { personId: id('people'), day: '2026-05-11', reason: 'Travel is missing.' },
    '/v1/time-lock': { lockedThrough: null },
    '/v1/visits': { jobId: id('jobs'), day: '2026-05-11', startTime: '07:30', lengthMinutes: 480, personIds: [id('people')], bring: ['Mud pump'], note: 'Drain first.' },
    '/v1/visits/{id}/cancel': { reason: 'Rain.' },
    '/v1/visits/{id}/restore': {},
    '/v1/days-off': { personId: id('people'), firstDay: '2026-07-06', lastDay: '2026-07-10', note: 'Back on Monday' },
    '/v1/days-off/{id}/withdraw': {},
    '/v1/blockers': { jobId: id('jobs'), kind: 'utility-locate', requestedOn: '2026-05-01', clearOn: '2026-05-06', reference: 'Ticket 417' },
    '/v1/blockers/{id}/withdraw': {},
    '/v1/loads': { jobId: id('jobs'), featureId: id('features'), hauledAt: '2026-05-11T10:00:00-04:00', material: 'sediment', volume: { value: 5, unit: 'yd3' } },
    '/v1/depths': { jobId: id('jobs'), featureId: id('features'), foundAt: '2026-05-11T10:00:00-04:00', place: 'Off the inlet', toBottom: { value: 31, unit: 'in' } },
    '/v1/material-uses': { jobId: id('jobs'), featureId: id('features'), usedAt: '2026-05-11T10:00:00-04:00', partId: id('parts'), quantity: '1' },
    '/v1/installations': { jobId: id('jobs'), featureId: id('features'), installedAt: '2026-05-11T10:00:00-04:00', kind: 'skimmer', serialNumber: '000-1724' },
    '/v1/water-readings': { jobId: id('jobs'), featureId: id('features'), takenAt: '2026-05-11T10:00:00-04:00', ph: 7.8 },
    '/v1/change-requests': { jobId: id('jobs'), featureId: id('features'), foundAt: '2026-05-11T10:00:00-04:00', description: 'Liner torn behind the waterfall' },
    '/v1/change-requests/{id}/answer': { decision: 'taken-up' },
    '/v1/sign-offs': { jobId: id('jobs'), featureId: id('features'), signedAt: '2026-05-11T10:00:00-04:00', signedBy: 'Marta Ellingsworth', statement: 'Complete but for two stones.', drawing: 'M10 40 L50 40' },
    '/v1/punch-items': { jobId: id('jobs'), featureId: id('features'), description: 'Reset two stones' },
    ...Object.fromEntries(['loads', 'depths', 'material-uses', 'installations', 'water-readings', 'change-requests', 'sign-offs'].map((family) => [`/v1/${family}/{id}/void`, { reason: 'Wrong job.' }])),
    '/v1/calendar-feeds': { name: 'Kitchen tablet' },
    '/v1/calendar-feeds/{id}/revoke': {},
    '/v1/costs': { jobId: id('jobs'), costCode: 'hauling', kind: 'disposal', description: 'Tipping fee', amount: money('187.31'), incurredOn: '2026-05-11' },
    '/v1/costs/{id}/void': { reason: 'Wrong job.' },
    '/v1/attachments': { uploadId: id('uploads'), subject: { kind: 'job', id: id('jobs') }, kind: 'photo' },
    '/v1/attachments/{id}/void': { reason: 'Shows the neighbours.' },
    '/v1/invoices': { jobId: id('jobs'), basis: 'final' },
    '/v1/invoices/{id}/issue': {},
    '/v1/invoices/{id}/void': { reason: 'Wrong address.' },
    '/v1/payments': { invoiceId: id('invoices'), amount: money('100.00'), receivedOn: '2026-06-01', method: 'check' },
    '/v1/payments/{id}/void': { reason: 'The check bounced.' },
  };
}

/** Makes one of everything through the API, as the owner: the quote accepted, the invoice issued and part-paid. */
export async function makeWorld({ owner, crew }: Pick<TestCompany, 'owner' | 'crew'>): Promise<World> {
  const world: Record<string, string> = { people: crew.personId };
  const make = async (path: string): Promise<void> => {
    const answer = await send(owner, path, bodiesFor(world)[path] ?? {});
    world[path.replace('/v1/', '')] = (answer as { id: string }).id;
  };
  for (const path of ['/v1/customers', '/v1/sites', '/v1/features', '/v1/equipment', '/v1/surveys', '/v1/labor-rules', '/v1/work-week-policies', '/v1/burden-rates', '/v1/opening-wages', '/v1/parts', '/v1/quotes']) await make(path);
  await send(owner, `/v1/quotes/${world['quotes']}/issue`, {});
  const accepted = (await send(owner, `/v1/quotes/${world['quotes']}/acceptance`, bodiesFor(world)['/v1/quotes/{id}/acceptance'] ?? {})) as { jobId: string };
  world['jobs'] = accepted.jobId;
  world['uploads'] = await owner.upload(await makePhoto());
  for (const path of ['/v1/visits', '/v1/days-off', '/v1/blockers', '/v1/calendar-feeds', '/v1/time-entries', '/v1/costs', '/v1/attachments', '/v1/invoices']) await make(path);
  for (const path of ['/v1/loads', '/v1/depths', '/v1/material-uses', '/v1/installations', '/v1/water-readings', '/v1/change-requests', '/v1/sign-offs', '/v1/punch-items']) await make(path);
  await send(owner, `/v1/invoices/${world['invoices']}/issue`, {});
  await make('/v1/payments');
  const enrolment = (await send(owner, '/v1/device-enrolments', bodiesFor(world)['/v1/device-enrolments'] ?? {})) as { id: string; code: string };
  world['device-enrolments'] = enrolment.id;
  world['devices'] = ((await send(owner, '/v1/devices', { code: enrolment.code, name: 'Yellow phone', secret: randomBytes(32).toString('base64url') })) as { id: string }).id;
  return world;
}

async function send(client: Client, path: string, body: object): Promise<unknown> {
  const answer = await client.post(path, body);
  if (answer.status >= 300) throw new Error(`POST ${path}: ${answer.text}`);
  return answer.body as unknown;
}
