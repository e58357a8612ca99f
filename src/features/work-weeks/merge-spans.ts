import type { PersonSpan } from '../time-entries/index.js';

/** The same time of the same people with no span over another, so that no hour is read twice. */
export function mergeSpans(spans: readonly PersonSpan[]): PersonSpan[] {
  const merged: PersonSpan[] = [];
  for (const span of [...spans].sort((a, b) => a.personId.localeCompare(b.personId) || a.from.getTime() - b.from.getTime())) {
    const before = merged.at(-1);
    if (before === undefined || before.personId !== span.personId || before.until < span.from) merged.push(span);
    else merged[merged.length - 1] = { ...before, until: before.until > span.until ? before.until : span.until };
  }
  return merged;
}
