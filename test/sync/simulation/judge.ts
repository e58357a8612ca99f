import { came, type Ledger, type Noted } from './ledger.js';
import { type ModelRow, SequentialModel } from './sequential-model.js';
import type { Firm, Worker } from './world.js';

interface ListedHour {
  readonly id: string;
  readonly jobId: string;
  readonly personId: string;
  readonly costCode: string;
  readonly paidMinutes: string;
  readonly voidedAt: string | null;
}

/** What phones make, and the list in which the office finds it. */
const LISTS: Readonly<Record<string, string>> = { 'time-entry': '/v1/time-entries', load: '/v1/loads', 'punch-item': '/v1/punch-items' };

/**
 * Works everything through once more in the sequential model, in an order that the service itself named: what made a
 * row first, then its changes by revision. Each must come to what the phone was told, and what was refused must have
 * had a reason.
 */
export function replay(ledger: Ledger): SequentialModel {
  const model = new SequentialModel();
  const told = [...ledger.noted.values()].filter((noted) => noted.outcome !== null);
  const applied = told.filter((noted) => verdictOf(noted) === 'applied').sort(byRevision);
  for (const noted of applied) {
    const { mutation, outcome } = noted;
    const wanted = model.apply(mutation);
    if (wanted !== 'applied') ledger.violate(`${nameOf(noted)} was applied; one after the other it is ${wanted}`);
    const revision = rowOf(model, mutation)?.revision;
    if (outcome?.revision !== revision) ledger.violate(`${nameOf(noted)} made revision ${outcome?.revision}, not ${revision}`);
  }
  for (const noted of told) {
    const { mutation, expected, outcome } = noted;
    const verdict = verdictOf(noted);
    if (!expected.split(' or ').includes(verdict)) ledger.violate(`${nameOf(noted)} came to ${verdict}, not ${expected}: ${outcome?.problem?.detail ?? ''}`);
    // A conflict is one only if somebody else's change is there to prove it.
    if (verdict === 'conflict' && !((rowOf(model, mutation)?.revision ?? 0) > (mutation.baseRevision ?? Infinity))) ledger.violate(`${nameOf(noted)} was told a conflict, and nobody changed it`);
  }
  return model;
}

/** Of two that made the same revision, both voids, the one that was made on the later one did it. */
function byRevision(a: Noted, b: Noted): number {
  return (a.outcome?.revision ?? 0) - (b.outcome?.revision ?? 0) || (b.mutation.baseRevision ?? 0) - (a.mutation.baseRevision ?? 0);
}

function rowOf(model: SequentialModel, { body }: Noted['mutation']): ModelRow | undefined {
  return model.rows.get((body as { id: string }).id);
}

function nameOf({ mutation }: Noted): string {
  return `${mutation.kind} ${mutation.id}`;
}

/** Holds what the service has, by its own lists, against the model: nothing lost, nothing twice, the same totals. */
export async function compare(ledger: Ledger, model: SequentialModel, firms: readonly Firm[]): Promise<{ rows: number; minutes: number }> {
  let rows = 0;
  for (const [entity, path] of Object.entries(LISTS)) {
    const listed: { id: string }[] = [];
    for (const { office } of firms) listed.push(...(await office.all<{ id: string }>(path)));
    rows += listed.length;
    const [ids, wanted] = [new Set(listed.map(({ id }) => id)), new Set(model.of(entity).map(({ body }) => body.id))];
    if (ids.size !== listed.length) ledger.violate(`a ${entity} is in its list twice`);
    for (const id of wanted) if (!ids.has(id)) ledger.violate(`the acknowledged ${entity} ${id} is lost`);
    for (const id of ids) if (!wanted.has(id)) ledger.violate(`the ${entity} ${id} is there, and no phone was told so`);
    if (entity === 'time-entry') compareSums(ledger, model.minutes(), listed as unknown as ListedHour[]);
  }
  await compareJobs(ledger, model.minutes(), firms);
  return { rows, minutes: [...model.minutes().values()].reduce((sum, each) => sum + each, 0) };
}

function compareSums(ledger: Ledger, wanted: ReadonlyMap<string, number>, listed: readonly ListedHour[]): void {
  const sums = new Map<string, number>();
  for (const hour of listed) {
    if (hour.voidedAt !== null) continue;
    const key = [hour.personId, hour.jobId, hour.costCode].join(' ');
    sums.set(key, (sums.get(key) ?? 0) + Number(hour.paidMinutes));
  }
  for (const key of new Set([...sums.keys(), ...wanted.keys()])) {
    if (sums.get(key) !== wanted.get(key)) ledger.violate(`the minutes of ${key} are ${sums.get(key)}, not ${wanted.get(key)}`);
  }
}

/** The hours that the owner is shown for each job come from the model too. */
async function compareJobs(ledger: Ledger, minutes: ReadonlyMap<string, number>, firms: readonly Firm[]): Promise<void> {
  for (const { office, jobs } of firms) {
    for (const job of jobs) {
      const { hours } = await office.ask<{ hours: { actual: string } }>('GET', `/v1/jobs/${job}/profitability`);
      const wanted = [...minutes].filter(([key]) => key.split(' ')[1] === job).reduce((sum, [, each]) => sum + each, 0);
      if (Math.abs(Number(hours.actual) * 60 - wanted) > 1) ledger.violate(`job ${job} has ${hours.actual} h, not ${wanted / 60}`);
    }
  }
}

/** The rows that a phone must have in the end, with their revisions, and no others of their kinds. */
export function wantedOn(model: SequentialModel, { id, role, company: { assignments } }: Worker): Map<string, number> {
  const kept = [...model.rows.values()].filter(({ entity, body }) => assignments.isOn(id, body.jobId) && (entity !== 'time-entry' || role === 'crew-lead' || body['personId'] === id));
  return new Map(kept.map(({ entity, body, revision }) => [`${entity} ${body.id}`, revision]));
}

export function isWorkOfPhones(key: string): boolean {
  return (key.split(' ')[0] ?? '') in LISTS;
}

function verdictOf({ outcome }: Noted): string {
  return outcome === null ? 'unknown' : came(outcome) ?? 'unknown';
}
