interface PushedKind {
  /** The route that does the same: its body is the mutation's, and its roles may push it. */
  readonly route: string;
  /** What is otherwise than there. */
  readonly but?: string;
}

/**
 * What phones push, for the contract, which is made without starting the slices that bring the kinds. A test holds
 * kinds, bodies and roles together: a client that is written from the contract alone must not have to guess them.
 */
export const PUSHED_KINDS: Readonly<Record<string, PushedKind>> = {
  'attachment.add': { route: 'POST /v1/attachments', but: 'while its upload is not there whole, `final` is false' },
  'attachment.void': { route: 'POST /v1/attachments/{id}/void' },
  'change-request.add': { route: 'POST /v1/change-requests' },
  'change-request.answer': { route: 'POST /v1/change-requests/{id}/answer', but: 'with `baseRevision`' },
  'change-request.void': { route: 'POST /v1/change-requests/{id}/void', but: 'with `baseRevision`' },
  'depth.record': { route: 'POST /v1/depths' },
  'depth.void': { route: 'POST /v1/depths/{id}/void', but: 'with `baseRevision`' },
  'installation.record': { route: 'POST /v1/installations' },
  'installation.void': { route: 'POST /v1/installations/{id}/void', but: 'with `baseRevision`' },
  'load.record': { route: 'POST /v1/loads' },
  'load.void': { route: 'POST /v1/loads/{id}/void', but: 'with `baseRevision`' },
  'material-use.record': { route: 'POST /v1/material-uses' },
  'material-use.void': { route: 'POST /v1/material-uses/{id}/void', but: 'with `baseRevision`' },
  'punch-item.add': { route: 'POST /v1/punch-items' },
  'punch-item.change': { route: 'PATCH /v1/punch-items/{id}', but: 'with `baseRevision`; without `jobId`, which never changes' },
  'sign-off.record': { route: 'POST /v1/sign-offs' },
  'sign-off.void': { route: 'POST /v1/sign-offs/{id}/void', but: 'with `baseRevision`' },
  'time-entry.correct': { route: 'PATCH /v1/time-entries/{id}', but: 'with `baseRevision`' },
  'time-entry.log': { route: 'POST /v1/time-entries', but: '`recordedAt` and `sentAt` are those of the push' },
  'time-entry.start': { route: 'POST /v1/time-entries', but: 'without `endedAt`, `unpaidBreakMinutes`, `breaks`, `recordedAt` and `sentAt`' },
  'time-entry.stop': { route: 'POST /v1/time-entries/{id}/stop', but: 'without `endedAt` the hours end at `recordedAt`' },
  'time-entry.void': { route: 'POST /v1/time-entries/{id}/void' },
  'water-reading.record': { route: 'POST /v1/water-readings' },
  'water-reading.void': { route: 'POST /v1/water-readings/{id}/void', but: 'with `baseRevision`' },
};

/** The table of the contract: a kind, the route whose body and roles are its own, and what is otherwise. */
export function pushedKindsAsTable(): string {
  const rows = Object.entries(PUSHED_KINDS).map(([kind, { route, but }]) => `| \`${kind}\` | \`${route}\` | ${but ?? ''} |`);
  return ['| kind | as the route | but |', '| --- | --- | --- |', ...rows].join('\n');
}
