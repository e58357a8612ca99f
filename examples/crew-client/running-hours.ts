import type { PhoneState } from './phone-state.js';

/** What `time-entry.start` takes, but for the entry's id and the moment. */
export interface StartedWork {
  readonly jobId: string;
  readonly personId: string;
  readonly costCode: string;
  readonly kind?: 'work' | 'travel';
  readonly note?: string;
}

interface Hours {
  readonly id: string;
  readonly personId?: string;
  readonly endedAt?: string | null;
  readonly voidedAt?: string | null;
}

/** The entries of a person that run: by the service's rows, with what the phone has not handed in yet put over them. */
export function runningOn({ rows, waiting }: PhoneState, personId: string): string[] {
  const running = new Set<string>();
  for (const { kind, id, value } of rows.values()) {
    const hours = value as Hours;
    if (kind === 'time-entry' && hours.personId === personId && hours.endedAt === null && !hours.voidedAt) running.add(id);
  }
  for (const { kind, body } of waiting.values()) {
    const hours = body as Hours;
    if (kind === 'time-entry.start' && hours.personId === personId) running.add(hours.id);
    if (kind === 'time-entry.stop' || kind === 'time-entry.void') running.delete(hours.id);
  }
  return [...running];
}
