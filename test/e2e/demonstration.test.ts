import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Response } from 'supertest';
import { EQUIPMENT, MAKES } from '../../src/features/demonstration/content/equipment.js';
import { Demonstration } from '../../src/features/demonstration/index.js';
import { PULLED_KINDS } from '../../src/features/sync/pull/pulled-kinds.js';
import { Clock } from '../../src/platform/clock/clock.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, signIn } from '../support/test-company.js';

/** Read as a foreign client would: untyped JSON. */
type Item = Response['body'];

const PASSWORD = 'a password of the demonstration';
/** A Wednesday, so that the days before are counted over weekends and over the clock change of March. */
const TODAY = '2027-04-14T15:00:00Z';
const LISTS = ['people', 'customers', 'sites', 'features', 'equipment', 'surveys', 'labor-rules', 'parts', 'quotes', 'jobs', 'time-entries', 'costs', 'invoices', 'payments', 'attachments',
  'loads', 'depths', 'material-uses', 'installations', 'water-readings', 'change-requests', 'punch-items', 'sign-offs', 'visits', 'days-off', 'blockers', 'work-week-policies', 'burden-rates'];

interface Stage {
  readonly test: TestApp;
  readonly owner: Client;
  readonly lists: Record<string, Item[]>;
}

async function stage(): Promise<Stage> {
  const test = await startTestApp();
  await test.app.get(Clock).asOf(new Date(TODAY), () => test.app.get(Demonstration).seedWhenEmpty(PASSWORD, () => undefined));
  const owner = await signIn(test, 'owner@wrenmarsh.example', PASSWORD);
  const lists: Record<string, Item[]> = {};
  for (const name of LISTS) lists[name] = (await owner.get(`/v1/${name}?limit=200`)).body.items;
  return { test, owner, lists };
}

describe('the demonstration company', () => {
  let here: Stage;

  beforeAll(async () => {
    here = await stage();
  }, 60_000);
  afterAll(() => here.test.close());

  const of = (name: string, fits: (item: Item) => boolean): Item[] => (here.lists[name] ?? []).filter(fits);
  const only = (name: string, fits: (item: Item) => boolean): Item => {
    const [item, ...others] = of(name, fits);
    expect(others).toEqual([]);
    return item;
  };
  const profitOf = async (job: Item): Promise<Item> => (await here.owner.get(`/v1/jobs/${job.id}/profitability`)).body;

  it('is made once: a second start finds a company and does nothing', async () => {
    const said: string[] = [];
    expect(await here.test.app.get(Demonstration).seedWhenEmpty(null, (line) => said.push(line))).toBeNull();
    expect(said).toEqual([]);
    expect(await here.test.sql('SELECT count(*)::int AS n FROM company')).toEqual([{ n: 1 }]);
  });

  it('has somebody of each role who can sign in', async () => {
    for (const role of ['owner', 'estimator', 'crew-lead', 'crew']) {
      const answer = await here.test.request('post', '/v1/sessions').send({ email: `${role}@wrenmarsh.example`, password: PASSWORD });
      expect([answer.status, answer.body.person?.role]).toEqual([201, role]);
    }
  });

  it('has a feature at every stage up to the acceptance', () => {
    const { features = [], surveys = [], quotes = [] } = here.lists;
    const surveyed = new Set(surveys.map((survey) => survey.featureId));
    const quoted = new Set(quotes.map((quote) => quote.featureId));
    expect(features.filter(({ id }) => !surveyed.has(id) && !quoted.has(id))).not.toHaveLength(0);
    expect(features.filter(({ id }) => surveyed.has(id) && !quoted.has(id))).not.toHaveLength(0);
    expect(new Set(quotes.map((quote) => quote.state))).toEqual(new Set(['draft', 'issued', 'accepted']));
    expect(of('quotes', (quote) => quote.state === 'issued' && quote.validUntil < '2027-04-15')).toEqual([]);
  });

  it('has a quote whose first revision was superseded by the second', async () => {
    const revised = only('quotes', (quote) => quote.revision > 1);
    const { items } = (await here.owner.get(`/v1/quotes/${revised.id}/revisions`)).body;
    expect(items.map((each: Item) => [each.revision, each.state, each.supersededByRevision])).toEqual([[2, 'issued', null], [1, 'superseded', 2]]);
  });

  it('prices a survey of last year by the labor rule of then', async () => {
    const draft = only('quotes', (quote) => quote.state === 'draft');
    const { lines } = (await here.owner.get(`/v1/quotes/${draft.id}`)).body;
    const cleanout = JSON.stringify(lines.find((line: Item) => line.costCode === 'cleanout').working);
    const [old, current] = of('labor-rules', (rule) => rule.costCode === 'cleanout').sort((a, b) => (a.effectiveFrom < b.effectiveFrom ? -1 : 1));
    expect([old.hoursPerUnit, current.hoursPerUnit]).toEqual(['2.1', '1.75']);
    expect(cleanout).toContain(old.id);
    expect(cleanout).not.toContain(current.id);
  });

  it('has a job that is planned, one under way with hours of two people, and finished ones', () => {
    const states = (here.lists['jobs'] ?? []).map((job) => job.state as string);
    expect(new Set(states)).toEqual(new Set(['planned', 'under-way', 'finished']));
    const underWay = only('jobs', (job) => job.state === 'under-way');
    const people = new Set(of('time-entries', (entry) => entry.jobId === underWay.id).map((entry) => entry.personId));
    expect(people.size).toBeGreaterThanOrEqual(2);
  });

  it('logs no hour of the future, and none on a weekend', () => {
    for (const { startedAt, endedAt } of of('time-entries', (entry) => entry.endedAt !== null)) {
      expect(Date.parse(endedAt)).toBeLessThan(Date.parse(TODAY));
      expect([0, 6]).not.toContain(new Date(startedAt).getUTCDay());
    }
  });

  it('has invoices that are open, overdue, part-paid and paid', () => {
    const open = of('invoices', (invoice) => invoice.state === 'issued');
    expect(open.filter((invoice) => invoice.dueOn < '2027-04-14')).toHaveLength(1);
    expect(open.filter((invoice) => invoice.dueOn >= '2027-04-14')).toHaveLength(1);
    expect(of('invoices', (invoice) => invoice.state === 'part-paid')).toHaveLength(1);
    expect(of('invoices', (invoice) => invoice.state === 'paid')).toHaveLength(2);
  });

  it('has numbers that follow the days', () => {
    for (const [name, day] of [['invoices', 'issuedOn'], ['quotes', 'id']] as const) {
      const byNumber = [...(here.lists[name] ?? [])].sort((a, b) => (a.number < b.number ? -1 : 1)).map((each) => each[day] as string);
      expect(byNumber).toEqual([...byNumber].sort());
    }
  });

  it('lost money on one job, with hours far over the plan, and on no other', async () => {
    const finished = of('jobs', (job) => job.state === 'finished');
    const profits = await Promise.all(finished.map(profitOf));
    const [lost, ...others] = profits.filter((profit) => Number(profit.margin.amount) < 0);
    expect(others).toEqual([]);
    expect(Number(lost.hours.actual)).toBeGreaterThan(2 * Number(lost.hours.planned));
    expect(lost.receivedTotal.amount).not.toBe('0.00');
    expect(profits.length).toBeGreaterThan(3);
  });

  it('keeps what three parts cost before', async () => {
    const earlier = await Promise.all((here.lists['parts'] ?? []).map(async (part) => (await here.owner.get(`/v1/parts/${part.id}/costs`)).body.items as Item[]));
    const changed = earlier.filter((costs) => costs.length > 1);
    expect(changed).toHaveLength(3);
    for (const [now, before] of changed) expect(Date.parse(before.recordedAt)).toBeLessThan(Date.parse(now.recordedAt));
  });

  it('has a survey and parts that a proposal finds something with in every scope', async () => {
    const { surveyId } = only('quotes', (quote) => quote.title.includes('in phases'));
    const scope = ['clean-out', 'haul-away', 'liner', 'edge', 'skimmer', 'circulation', 'filter', 'waterfall', 'doser', 'plants', 'fish'];
    const { body } = await here.owner.post(`/v1/surveys/${surveyId}/proposal`, { scope });
    const items = body.items as { scope: string; labor: { hours: string | null }[]; parts: { kind: string; suggested: object | null }[] }[];
    expect(items.map((item) => item.scope)).toEqual(scope);
    expect(items.filter(({ labor }) => labor.length === 0 || labor.some(({ hours }) => hours === null))).toEqual([]);
    const kinds = items.flatMap(({ parts }) => parts);
    expect([...new Set(kinds.map(({ kind }) => kind))]).toEqual(['liner', 'underlayment', 'stone', 'skimmer', 'pump', 'pipe', 'fitting', 'filter', 'spillway', 'doser', 'plant', 'fish']);
    expect(kinds.filter(({ suggested }) => suggested === null)).toEqual([]);
    expect((await here.owner.post('/v1/quotes', { title: 'As proposed', ...body.draft })).status).toBe(201);
  });

  it('has an issued quote in phases with options, and a document that shows them', async () => {
    const issued = only('quotes', (quote) => quote.title.includes('in phases'));
    const { state, sections, netTotal, lines } = (await here.owner.get(`/v1/quotes/${issued.id}`)).body;
    expect(state).toBe('issued');
    expect(new Set(sections.map((section: Item) => `${section.phase} ${section.optional}`))).toEqual(new Set(['1 false', '2 false', '1 true', '2 true']));
    const optional = new Set(sections.filter((section: Item) => section.optional).map((section: Item) => section.key));
    const base = lines.filter((line: Item) => !optional.has(line.section)).map((line: Item) => Math.round(Number(line.amount.amount) * 100));
    expect(base.reduce((sum: number, cents: number) => sum + cents, 0)).toBe(Math.round(Number(netTotal.amount) * 100));
    const { status, headers } = await here.owner.get(`/v1/quotes/${issued.id}/document`);
    expect([status, headers['content-type']]).toEqual([200, 'application/pdf']);
  });

  it('has a plan of visits around today, one of them called off, and says what speaks against it', async () => {
    const visits = here.lists['visits'] ?? [];
    const days = visits.map((visit) => visit.day as string).sort();
    expect([days[0]?.localeCompare('2027-04-14'), days.at(-1)?.localeCompare('2027-04-14')]).toEqual([-1, 1]);
    expect(of('visits', (visit) => visit.state === 'cancelled')).toHaveLength(1);
    expect(new Set(visits.flatMap((visit) => visit.warnings.map((warning: Item) => warning.code)))).toEqual(new Set(['blocked', 'day-off']));
    expect(new Set(of('blockers', (blocker) => blocker.clearedOn === null).map((blocker) => blocker.kind))).toEqual(new Set(['utility-locate', 'materials']));
    const crew = await signIn(here.test, 'crew@wrenmarsh.example', PASSWORD);
    const day = (await crew.get('/v1/day?date=2027-04-14')).body;
    expect(JSON.stringify(day)).toContain('Circulation.');
  });

  it('has facts of every kind from the site, a request for a change that waits, and photos that open', async () => {
    for (const kind of ['loads', 'depths', 'material-uses', 'installations', 'water-readings', 'change-requests', 'punch-items', 'sign-offs']) expect([kind, here.lists[kind]]).not.toEqual([kind, []]);
    const waiting = only('change-requests', (request) => request.decision === null);
    expect([waiting.attachmentIds.length, waiting.photosMissing]).toEqual([2, []]);
    for (const { id, mediaType } of here.lists['attachments'] ?? []) {
      const { status, headers } = await here.owner.get(`/v1/attachments/${id}/content`);
      expect([status, headers['content-type']]).toEqual([200, mediaType]);
    }
    const signed = only('sign-offs', () => true);
    expect(only('jobs', (job) => job.id === signed.jobId).state).toBe('finished');
  });

  it('has hours that are approved, hours that are locked, hours that wait, and somebody at work', async () => {
    const { lockedThrough } = (await here.owner.get('/v1/time-lock')).body;
    const running = only('time-entries', (entry) => entry.endedAt === null);
    const others = of('time-entries', (entry) => entry.endedAt !== null);
    expect(others.filter(({ startedAt }) => startedAt < lockedThrough).every(({ approvedAt }) => approvedAt !== null)).toBe(true);
    expect(others.filter(({ startedAt, approvedAt }) => startedAt > lockedThrough && approvedAt !== null)).not.toHaveLength(0);
    expect(others.filter(({ approvedAt }) => approvedAt === null)).not.toHaveLength(0);
    expect([running.approvedAt, Date.parse(TODAY) - Date.parse(running.startedAt)]).toEqual([null, 95 * 60_000]);
  });

  it('has a week with overtime, and burden by rates that say that they are invented', async () => {
    const days = new Set(of('time-entries', (entry) => entry.endedAt !== null).map(({ startedAt }) => (startedAt as string).slice(0, 10)));
    const weeks = (await Promise.all([...days].map(async (day) => (await here.owner.get(`/v1/work-weeks?of=${day}`)).body.items as Item[]))).flat();
    expect(weeks.filter((week) => Number(week.overtime.hours) > 0)).not.toHaveLength(0);
    for (const { name } of here.lists['burden-rates'] ?? []) expect(name).toContain('(invented)');
  });

  it('names only makes of its own', () => {
    expect(EQUIPMENT.length).toBeGreaterThan(15);
    for (const { make } of here.lists['equipment'] ?? []) expect(MAKES).toContain(make);
  });

  it('writes only to addresses and telephone numbers that nobody can have', () => {
    const folder = path.resolve(import.meta.dirname, '../../src/features/demonstration/content');
    const text = readdirSync(folder).map((file) => readFileSync(path.join(folder, file), 'utf8')).join('\n');
    expect(text.match(/@\w[\w.]*/g)?.filter((address) => !address.endsWith('.example'))).toEqual([]);
    expect(text.match(/\+\d[\d ]+/g)?.filter((phone) => !phone.startsWith('+1 555 01'))).toEqual([]);
  });

  it('is the same when it is made anew on the same day', async () => {
    const there = await stage();
    try {
      for (const name of LISTS) expect([name, comparable(there, name)]).toEqual([name, comparable(here, name)]);
    } finally {
      await there.test.close();
    }
  }, 60_000);

  it('takes a random password of twenty letters and digits when none is given', async () => {
    const test = await startTestApp();
    try {
      const [first] = (await test.app.get(Demonstration).seedWhenEmpty(null, () => undefined)) ?? [];
      expect(first?.password).toMatch(/^([a-z0-9]{5}-){3}[a-z0-9]{5}$/);
      await signIn(test, 'owner@wrenmarsh.example', first?.password);
    } finally {
      await test.close();
    }
  }, 60_000);

  it('leaves nothing behind when it is interrupted', async () => {
    const test = await startTestApp();
    try {
      // The last kind of thing that is made, so that all else is there when it fails.
      await test.sql("CREATE FUNCTION fail() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION 'interrupted'; END $$");
      await test.sql('CREATE TRIGGER fail BEFORE INSERT ON payment FOR EACH ROW EXECUTE FUNCTION fail()');
      await expect(test.app.get(Demonstration).seedWhenEmpty(PASSWORD, () => undefined)).rejects.toThrow('interrupted');
      expect(await test.sql('SELECT FROM company')).toEqual([]);
      await test.sql('DROP TRIGGER fail ON payment');
      expect(await test.app.get(Demonstration).seedWhenEmpty(PASSWORD, () => undefined)).not.toBeNull();
    } finally {
      await test.close();
    }
  }, 60_000);

  it('is not made with a password that holds somebody\'s address', async () => {
    const test = await startTestApp();
    try {
      await expect(test.app.get(Demonstration).seedWhenEmpty('my Crew@wrenmarsh.example one', () => undefined)).rejects.toThrow('RILLBOOK_DEMO_PASSWORD must not hold crew@wrenmarsh.example');
    } finally {
      await test.close();
    }
  });

  it('gives a phone its rows as their own routes answer the crew, as the contract says', async () => {
    const lead = await signIn(here.test, 'crew-lead@wrenmarsh.example', PASSWORD);
    const seen = new Map<string, Item>();
    for (let more = true, cursor = ''; more; ) {
      const { body } = await lead.get(`/v1/sync/pull?limit=500${cursor}`).expect(200);
      for (const item of body.items as Item[]) seen.set(item.kind, item);
      ({ more } = body as { more: boolean });
      cursor = `&cursor=${encodeURIComponent(body.cursor as string)}`;
    }
    expect([...seen.keys()].sort()).toEqual(Object.keys(PULLED_KINDS).filter((kind) => kind !== 'day-off'));
    for (const [kind, { id, value }] of seen) {
      const { route, without } = PULLED_KINDS[kind] ?? { route: kind };
      const answer = (await lead.get(route.replace('{id}', id)).expect(200)).body;
      for (const field of without ?? []) {
        expect(answer).toHaveProperty(field);
        delete answer[field];
      }
      expect([kind, value]).toEqual([kind, answer]);
    }
  });
});

/** A list without what the service chose by itself: the ids of jobs, told by their numbers, and the instant of the entry. */
function comparable({ lists }: Stage, name: string): string {
  const numbers = new Map((lists['jobs'] ?? []).map((job) => [job.id as string, job.number as string]));
  return JSON.stringify(lists[name], (key, value: unknown) => (key === 'createdAt' ? undefined : (numbers.get(value as string) ?? value)), 1);
}
