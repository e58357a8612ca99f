/** What the client needs of the service's contract, as `openapi.json` has it; nothing here comes from the service's own code. */

/** Something that was taken down on the phone and must reach the service once. */
export interface Mutation {
  /** Made on the phone; the same for ever, however often it is sent. */
  readonly id: string;
  /** Rises by one with each mutation of this phone. */
  readonly counter: number;
  /** `time-entry.log` */
  readonly kind: string;
  /** RFC 3339, by the phone's clock. */
  readonly recordedAt: string;
  readonly body: object;
  /** The revision that a change was made on; missing for a fact. */
  readonly baseRevision?: number;
  /** Mutations that must have been applied before. */
  readonly dependsOn?: readonly string[];
}

export interface ProblemDetails {
  readonly status: number;
  readonly code: string;
  readonly detail: string;
  readonly errors?: readonly { readonly pointer: string; readonly detail: string }[];
}

/** `duplicate` says that the service had it already, and `first` what came of it then. */
export interface Outcome {
  readonly id: string;
  readonly outcome: 'applied' | 'duplicate' | 'conflict' | 'rejected';
  readonly first?: 'applied' | 'conflict' | 'rejected';
  readonly entity?: string;
  readonly entityId?: string;
  readonly revision?: number;
  /** The service's version, when another change came first. */
  readonly current?: object;
  readonly problem?: ProblemDetails;
  /** Whether this is the last word; else the same mutation may be sent again. */
  readonly final: boolean;
}

/** What came of it the first time. */
export function came(outcome: Outcome): Outcome['first'] {
  return outcome.outcome === 'duplicate' ? outcome.first : outcome.outcome;
}

/** What `attachment.add` takes, but for the upload, which is known only when the bytes are there. */
export interface AttachmentBody {
  readonly id: string;
  readonly subject: { readonly kind: 'job' | 'feature' | 'equipment' | 'cost'; readonly id: string };
  readonly kind: 'photo' | 'receipt' | 'document';
  readonly caption?: string;
  /** RFC 3339, by the phone's clock. */
  readonly takenAt?: string;
}

export interface PushAnswer {
  readonly receivedAt: string;
  /** The phone's clock less the service's. */
  readonly clockSkewSeconds: number | null;
  readonly warnings: readonly unknown[];
  readonly items: readonly Outcome[];
}

export interface PulledItem {
  readonly kind: string;
  readonly id: string;
  readonly change: 'upsert' | 'removal';
  readonly revision?: number;
  readonly value?: object;
}

export interface PullAnswer {
  readonly items: readonly PulledItem[];
  readonly cursor: string;
  /** Whether there is another page right now. */
  readonly more: boolean;
}

export interface SessionAnswer {
  readonly accessToken: string;
  /** Seconds. */
  readonly expiresIn: number;
  readonly refreshToken: string;
  readonly person: { readonly id: string; readonly name: string; readonly role: string };
}

/** The most mutations in one push. */
export const MOST_IN_A_PUSH = 500;
