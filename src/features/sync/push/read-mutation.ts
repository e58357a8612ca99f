import type { Actor } from '../../../platform/auth/actor.js';
import { Problem } from '../../../platform/http/problem.js';
import { toProblem } from '../../../platform/http/problem.filter.js';
import { validateAs } from '../../../platform/http/validation.js';
import { requestDigest } from '../../../platform/resources/digest.js';
import type { MutationKind, MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import { inWordsOfPush } from './in-words-of-push.js';
import { MutationBody } from './push.dto.js';

/** A mutation that can be applied. */
export interface ReadMutation {
  readonly id: string;
  readonly envelope: MutationBody;
  readonly digest: Buffer;
  readonly dependsOn: readonly string[];
  readonly kind: MutationKind;
  readonly body: object;
}

/** A mutation that was refused before anything was tried; without an envelope it can't be kept. */
export interface RefusedMutation {
  readonly id: string;
  readonly envelope: MutationBody | null;
  readonly digest: Buffer | null;
  readonly problem: Problem;
}

/** Reads one mutation of a push. What is wrong with it is its own outcome, never that of the push. */
export async function readMutation(actor: Actor, kinds: MutationKinds, raw: { readonly id: string }): Promise<ReadMutation | RefusedMutation> {
  const id = raw.id.toLowerCase();
  let envelope: MutationBody;
  try {
    envelope = await validateAs(MutationBody, raw);
  } catch (error) {
    return { id, envelope: null, digest: null, problem: toProblem(error) };
  }
  const { kind: name, recordedAt, baseRevision } = envelope;
  // The raw body: the class adds nothing to it, but may leave out what it does not know.
  const { body } = raw as unknown as MutationBody;
  const digest = requestDigest({ kind: name, recordedAt, baseRevision, body });
  const refused = (problem: Problem): RefusedMutation => ({ id, envelope, digest, problem });
  const kind = kinds.find(name);
  if (kind === undefined) {
    return refused(new Problem('unknown-kind', `This service knows no mutation of the kind ${name}. Keep it, and send it again after the service was renewed.`, [{ pointer: '/kind', detail: 'is not a known kind' }]));
  }
  if (!kind.roles.includes(actor.role)) return refused(new Problem('not-allowed', `The role ${actor.role} may not do that; it takes ${kind.roles.join(', ')}.`));
  try {
    const dependsOn = (envelope.dependsOn ?? []).map((other) => other.toLowerCase());
    return { id, envelope, digest, dependsOn, kind, body: await validateAs(kind.body, body) };
  } catch (error) {
    return refused(inWordsOfPush(toProblem(error)));
  }
}
