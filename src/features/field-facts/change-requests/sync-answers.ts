import { OFFICE } from '../../../platform/auth/actor.js';
import { requireBaseRevision } from '../../../platform/sync/base-revision.js';
import type { MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import { PushedAnswer } from './change-request.dto.js';
import type { ChangeRequestsService } from './change-requests.service.js';

/** Lets the office answer from a phone. An answer is a change: it says the revision that was read. */
export function syncAnswers(requests: ChangeRequestsService, mutations: MutationKinds): void {
  mutations.add({
    kind: 'change-request.answer',
    roles: OFFICE,
    body: PushedAnswer,
    apply: async (actor, { body: { id, decision, answer }, context }) => {
      const row = await requests.answer(actor, id, { decision, answer: answer ?? null }, requireBaseRevision(context));
      return { entity: 'change-request', id: row.id, version: row.version };
    },
  });
}
