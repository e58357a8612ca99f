import { came } from '../../../examples/crew-client/index.js';
import type { Ledger, Noted } from './ledger.js';
import { type ModelRow, SequentialModel } from './sequential-model.js';
import { dayOf } from './work-days.js';
import type { Firm } from './world.js';

/** A revision of hours that the office made. */
export interface OfficeRevision {
  readonly id: string;
  readonly revision: number;
}

/**
 * Works everything through once more in the sequential model, in an order that the service itself named: what made a
 * row first, then its changes by revision. Each must come to what the phone was told, and what was refused must have
 * had a reason.
 */
export function replay(ledger: Ledger, revisions: readonly OfficeRevision[], firmOf: (noted: Noted) => Firm): SequentialModel {
  const model = new SequentialModel();
  const steps = [
    ...revisions.map((made) => ({ revision: made.revision, tie: 0, step: () => touch(ledger, model, made) })),
    // Of two that made the same revision, both voids, the one that was made on the later one did it.
    ...ledger.cameTo('applied').map((noted) => ({ revision: noted.outcome?.revision ?? 0, tie: -(noted.mutation.baseRevision ?? 0), step: () => apply(ledger, model, noted) })),
  ].sort((a, b) => a.revision - b.revision || a.tie - b.tie);
  for (const { step } of steps) step();
  for (const noted of ledger.noted.values()) requireVerdict(ledger, model, noted, firmOf);
  return model;
}

export function touch(ledger: Ledger, model: SequentialModel, { id, revision }: OfficeRevision): void {
  if (!model.touch(id, revision)) ledger.violate(`the office made revision ${revision} of ${id}, which is not the next one`);
}

function apply(ledger: Ledger, model: SequentialModel, noted: Noted): void {
  const { mutation, outcome } = noted;
  const wanted = model.apply(mutation);
  if (wanted !== 'applied') ledger.violate(`${nameOf(noted)} was applied; one after the other it is ${wanted}`);
  const revision = rowOf(model, noted)?.revision;
  if (outcome?.revision !== revision) ledger.violate(`${nameOf(noted)} made revision ${outcome?.revision}, not ${revision}`);
}

function requireVerdict(ledger: Ledger, model: SequentialModel, noted: Noted, firmOf: (noted: Noted) => Firm): void {
  const { mutation, expected, outcome, lost } = noted;
  const verdict = outcome === null ? undefined : came(outcome);
  if (verdict === undefined) {
    if (!lost) ledger.violate(`nobody ever learned what became of ${nameOf(noted)}`);
    return;
  }
  if (!expected.split(' or ').includes(verdict) && !isOfLockedDay(noted, rowOf(model, noted), firmOf)) ledger.violate(`${nameOf(noted)} came to ${verdict}, not ${expected}: ${outcome?.problem?.detail ?? ''}`);
  // A conflict is one only if somebody else's change is there to prove it.
  if (verdict === 'conflict' && !((rowOf(model, noted)?.revision ?? 0) > (mutation.baseRevision ?? Infinity))) ledger.violate(`${nameOf(noted)} was told a conflict, and nobody changed it`);
}

/** Refused as a change to a day that the office may have locked then. */
function isOfLockedDay(noted: Noted, row: ModelRow | undefined, firmOf: (noted: Noted) => Firm): boolean {
  const { mutation, outcome, notedAt, settledAt } = noted;
  if (row === undefined || outcome?.problem?.code !== 'period-locked' || !['time-entry.correct', 'time-entry.void'].includes(mutation.kind)) return false;
  return firmOf(noted).work.lockedDays.mayHaveBeen((through) => dayOf(String(row.body['startedAt'])) <= through, notedAt, settledAt);
}

function rowOf(model: SequentialModel, { mutation: { body } }: Noted): ModelRow | undefined {
  return model.rows.get((body as { id: string }).id);
}

function nameOf({ mutation }: Noted): string {
  return `${mutation.kind} ${mutation.id}`;
}
