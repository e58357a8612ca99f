export const ROLES = ['owner', 'estimator', 'crew-lead', 'crew'] as const;
export type Role = (typeof ROLES)[number];

/** Who acts, for which company. The first argument of every use case. */
export interface Actor {
  readonly companyId: string;
  /** null for the service itself (seeding, command line). */
  readonly personId: string | null;
  readonly role: Role;
  readonly sessionId: string | null;
}

/** The people who work with prices; nobody else ever receives a cost, a price, a wage or a margin. */
export const OFFICE: readonly Role[] = ['owner', 'estimator'];
/** The people who may act for others on a job site. */
export const LEADS: readonly Role[] = ['owner', 'estimator', 'crew-lead'];
export const EVERYONE: readonly Role[] = ROLES;

export function seesMoney(actor: Actor): boolean {
  return OFFICE.includes(actor.role);
}
