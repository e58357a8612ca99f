import type { Mutation } from './contract.js';
import type { PhoneState } from './phone-state.js';

/** What `time-entry.start` takes, but for the entry's id and the moment. */
export interface StartedWork {
  readonly jobId: string;
  readonly personId: string;
  readonly costCode: string;
  readonly kind?: 'work' | 'travel';
  readonly note?: string;
  /** When it began, if not now. RFC 3339. */
  readonly startedAt?: string;
}

interface Hours {
  readonly id: string;
  readonly personId?: string;
  readonly endedAt?: string | null;
  readonly voidedAt?: string | null;
}

/**
 * Starts and stops that the service has applied and whose row has not come since. The feed is behind what was just
 * written: a phone that asked its rows alone would start hours beside hours that run.
 */
export class RecentHours {
  private readonly mutations = new Map<string, Mutation>();

  applied(mutation: Mutation): void {
    if (/^time-entry\.(start|stop|void)$/.test(mutation.kind)) this.mutations.set((mutation.body as Hours).id, mutation);
  }

  came(id: string): void {
    this.mutations.delete(id);
  }

  all(): Mutation[] {
    return [...this.mutations.values()];
  }
}

/** The entries of a person that run: by the service's rows, with what the phone did since put over them. */
export function runningOn({ rows, recentHours, waiting }: PhoneState, personId: string): string[] {
  const running = new Set<string>();
  for (const { kind, id, value } of rows.values()) {
    const hours = value as Hours;
    if (kind === 'time-entry' && hours.personId === personId && hours.endedAt === null && !hours.voidedAt) running.add(id);
  }
  for (const { kind, body } of [...recentHours.all(), ...waiting.values()]) {
    const hours = body as Hours;
    if (kind === 'time-entry.start' && hours.personId === personId) running.add(hours.id);
    if (kind === 'time-entry.stop' || kind === 'time-entry.void') running.delete(hours.id);
  }
  return [...running];
}
