interface PulledKind {
  /** The route that reads one: the row has the same fields as its answer to the crew. */
  readonly route: string;
  /** Fields of that answer that the row has not. */
  readonly without?: readonly string[];
}

/** What phones pull, for the contract, which is made without starting the slices that bring the kinds. Tests hold kinds and fields together. */
export const PULLED_KINDS: Readonly<Record<string, PulledKind>> = {
  attachment: { route: '/v1/attachments/{id}' },
  blocker: { route: '/v1/blockers/{id}' },
  'change-request': { route: '/v1/change-requests/{id}' },
  'day-off': { route: '/v1/days-off/{id}' },
  depth: { route: '/v1/depths/{id}' },
  installation: { route: '/v1/installations/{id}' },
  job: { route: '/v1/jobs/{id}' },
  load: { route: '/v1/loads/{id}' },
  'material-use': { route: '/v1/material-uses/{id}' },
  person: { route: '/v1/people/{id}' },
  'punch-item': { route: '/v1/punch-items/{id}' },
  'sign-off': { route: '/v1/sign-offs/{id}' },
  site: { route: '/v1/sites/{id}' },
  'time-entry': { route: '/v1/time-entries/{id}' },
  // They depend on what else is planned, so the journal of the visit would not tell when they change.
  visit: { route: '/v1/visits/{id}', without: ['warnings'] },
  'water-reading': { route: '/v1/water-readings/{id}' },
};

/** The table of the contract: a kind, and the route whose answer its rows are like. */
export function pulledKindsAsTable(): string {
  const rows = Object.entries(PULLED_KINDS).map(([kind, { route, without }]) => `| \`${kind}\` | \`GET ${route}\`${without === undefined ? '' : `, without ${without.map((field) => `\`${field}\``).join(', ')}`} |`);
  return ['| kind | `value` as in |', '| --- | --- |', ...rows].join('\n');
}
