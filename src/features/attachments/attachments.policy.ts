import { type Actor, LEADS, seesMoney } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { notFound } from '../../platform/http/problems.js';
import type { AttachmentEntity } from './attachment.entity.js';
import type { SubjectBody } from './attachments.dto.js';

/** Receipts, and whatever is attached to a cost, show prices. */
function showsMoney(row: AttachmentEntity): boolean {
  return row.kind === 'receipt' || row.costId !== null;
}

/** An attachment that the actor may not see answers as one that is not there. @throws Problem 404 */
export function requireMaySee(actor: Actor, row: AttachmentEntity): void {
  if (showsMoney(row) && !seesMoney(actor) && row.attachedBy !== actor.personId) throw notFound('attachment');
}

/** What was voided may show what should not have been taken. @throws Problem 404 */
export function requireMayOpen(actor: Actor, row: AttachmentEntity): void {
  requireMaySee(actor, row);
  if (row.voidedAt !== null && !seesMoney(actor)) throw notFound('attachment');
}

/** @throws Problem 403: costs are not for crew, so not even whether there is one */
export function requireMayAttachTo(actor: Actor, subject: SubjectBody): void {
  if (subject.kind !== 'cost' || seesMoney(actor)) return;
  throw new Problem('not-allowed', 'Crew attach a receipt to the job; the office books it.', [{ pointer: '/subject/kind', detail: 'must be job, feature or equipment' }]);
}

/** @throws Problem 403 */
export function requireMayVoid(actor: Actor, row: AttachmentEntity): void {
  if (row.attachedBy === actor.personId || LEADS.includes(actor.role)) return;
  throw new Problem('not-allowed', 'Crew void what they attached themselves. Ask a crew lead or the office.');
}
