import { createHash } from 'node:crypto';
import { signInTo } from '../../support/service-process.js';
import type { Ledger } from './ledger.js';
import type { OfficeRevision } from './replay.js';
import type { SequentialModel } from './sequential-model.js';
import { type Firm, PASSWORD, type Worker } from './world.js';

/** Hours as the office lists them. */
export interface ListedHour {
  readonly id: string;
  readonly jobId: string;
  readonly personId: string;
  readonly costCode: string;
  readonly startedAt: string;
  readonly endedAt: string | null;
  readonly paidMinutes: string;
  readonly held: boolean;
  readonly voidedAt: string | null;
}

interface ListedPhoto {
  readonly id: string;
  readonly sha256: string;
}

/** What phones make, and the list in which the office finds it. */
const LISTS: Readonly<Record<string, string>> = { 'time-entry': '/v1/time-entries', load: '/v1/loads', 'punch-item': '/v1/punch-items', attachment: '/v1/attachments' };

/** The versions that the office made of the hours that it may have touched, as the service tells them. */
export async function officeRevisions({ office, workers, work }: Firm): Promise<OfficeRevision[]> {
  const crews = new Set(workers.map(({ id }) => id));
  const revisions: OfficeRevision[] = [];
  for (const id of work.touched) {
    const { items } = await office.ask<{ items: { version: number; changedBy: string }[] }>('GET', `/v1/time-entries/${id}/versions`);
    for (const { version, changedBy } of items) if (!crews.has(changedBy)) revisions.push({ id, revision: version });
  }
  return revisions;
}

/** Holds what the service has, by its own lists, against the model: nothing lost, nothing twice. @returns the hours */
export async function compareRows(ledger: Ledger, model: SequentialModel, firms: readonly Firm[]): Promise<{ rows: number; hours: ListedHour[] }> {
  let rows = 0;
  let hours: ListedHour[] = [];
  for (const [entity, path] of Object.entries(LISTS)) {
    const listed: { id: string }[] = [];
    for (const { office } of firms) listed.push(...(await office.all<{ id: string }>(path)));
    rows += listed.length;
    const [ids, wanted] = [new Set(listed.map(({ id }) => id)), new Set(model.of(entity).map(({ body }) => body.id))];
    if (ids.size !== listed.length) ledger.violate(`a ${entity} is in its list twice`);
    for (const id of wanted) if (!ids.has(id)) ledger.violate(`the acknowledged ${entity} ${id} is lost`);
    for (const id of ids) if (!wanted.has(id)) ledger.violate(`the ${entity} ${id} is there, and no phone was told so`);
    if (entity === 'time-entry') hours = listed as ListedHour[];
    if (entity === 'attachment') comparePhotos(ledger, model, listed as ListedPhoto[]);
  }
  compareSums(ledger, model.minutes(), hours);
  return { rows, hours };
}

function comparePhotos(ledger: Ledger, model: SequentialModel, listed: readonly ListedPhoto[]): void {
  for (const { id, sha256 } of listed) {
    const wanted = model.rows.get(id)?.body['sha256'];
    if (wanted !== sha256) ledger.violate(`the photo ${id} is ${sha256}, not ${String(wanted)}`);
  }
}

function compareSums(ledger: Ledger, wanted: ReadonlyMap<string, number>, listed: readonly ListedHour[]): void {
  const sums = new Map<string, number>();
  for (const hour of listed) {
    if (hour.voidedAt !== null || hour.endedAt === null) continue;
    const key = [hour.personId, hour.jobId, hour.costCode].join(' ');
    sums.set(key, (sums.get(key) ?? 0) + Number(hour.paidMinutes));
  }
  for (const key of new Set([...sums.keys(), ...wanted.keys()])) {
    if (sums.get(key) !== wanted.get(key)) ledger.violate(`the minutes of ${key} are ${sums.get(key)}, not ${wanted.get(key)}`);
  }
}

/** The hours that the owner is shown for each job come from the model too. @param minutes by person, job and cost code */
export async function compareJobs(ledger: Ledger, minutes: ReadonlyMap<string, number>, firms: readonly Firm[]): Promise<void> {
  for (const { office, jobs } of firms) {
    for (const job of jobs) {
      const { hours } = await office.ask<{ hours: { actual: string } }>('GET', `/v1/jobs/${job}/profitability`);
      const wanted = [...minutes].filter(([key]) => key.split(' ')[1] === job).reduce((sum, [, each]) => sum + each, 0);
      if (Math.abs(Number(hours.actual) * 60 - wanted) > 1) ledger.violate(`job ${job} has ${hours.actual} h, not ${wanted / 60}`);
    }
  }
}

/** Reads every photo back. @returns how many bytes they have */
export async function readPhotos(ledger: Ledger, model: SequentialModel, firms: readonly Firm[], url: string): Promise<number> {
  let size = 0;
  for (const { email, jobs } of firms) {
    const headers = { authorization: `Bearer ${await signInTo(url, email, PASSWORD)}` };
    for (const { body } of model.of('attachment').filter((photo) => jobs.includes(photo.body.jobId))) {
      const answer = await fetch(`${url}/v1/attachments/${body.id}/content`, { headers });
      const bytes = Buffer.from(await answer.arrayBuffer());
      size += bytes.length;
      if (createHash('sha256').update(bytes).digest('hex') !== body['sha256']) ledger.violate(`the photo ${body.id} is not what its phone has (${answer.status})`);
    }
  }
  return size;
}

/** The rows that a phone must have in the end, with their revisions, and no others of their kinds. */
export function wantedOn(model: SequentialModel, { id, role, company: { assignments } }: Worker): Map<string, number> {
  const kept = [...model.rows.values()].filter(({ entity, body }) => {
    if (entity === 'time-entry' && body['personId'] === id) return true;
    return assignments.isOn(id, body.jobId) && (entity !== 'time-entry' || role === 'crew-lead');
  });
  return new Map(kept.map(({ entity, body, revision }) => [`${entity} ${body.id}`, revision]));
}

export function isWorkOfPhones(key: string): boolean {
  return (key.split(' ')[0] ?? '') in LISTS;
}
