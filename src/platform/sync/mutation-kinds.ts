import { Injectable } from '@nestjs/common';
import type { Actor, Role } from '../auth/actor.js';

/** What is known of a mutation besides its body. */
export interface MutationContext {
  readonly mutationId: string;
  /** When the phone took it down, by the phone's clock. */
  readonly recordedAt: Date;
  /** When the service got it. */
  readonly receivedAt: Date;
  /** The phone's clock less the service's, in seconds; null when the phone did not say its time. */
  readonly clockSkewSeconds: number | null;
  /** The version that the phone changed; null for a fact. */
  readonly baseRevision: number | null;
}

/** The row that a mutation made or changed. */
export interface Effect {
  /** The kind as a phone pulls it: `time-entry`. */
  readonly entity: string;
  readonly id: string;
  readonly version: number;
}

export interface Mutation<B> {
  readonly body: B;
  readonly context: MutationContext;
}

/**
 * Something that a phone may push. It runs in the transaction in which its outcome is kept, and does what the REST
 * route does: a stale version is the Problem 412, anything refused another Problem.
 */
export interface MutationKind<B extends object = object> {
  /** `time-entry.log` */
  readonly kind: string;
  readonly roles: readonly Role[];
  /** Checks and documents the body, as a route's does. */
  readonly body: new () => B;
  apply(actor: Actor, mutation: Mutation<B>): Promise<Effect>;
  /** Slow work that `apply` needs done, such as that on a photo: before the transaction, which must not wait for it. */
  prepare?(actor: Actor, mutation: Mutation<B>): Promise<void>;
  /**
   * Many at once in a fixed number of statements, with one answer each, in their order. An item that is refused must
   * leave the transaction usable for the others.
   */
  applyMany?(actor: Actor, mutations: readonly Mutation<B>[]): Promise<readonly (Effect | Error)[]>;
}

/** What phones may push. Each slice adds its own when it starts. */
@Injectable()
export class MutationKinds {
  private readonly kinds = new Map<string, MutationKind>();

  add<B extends object>(kind: MutationKind<B>): void {
    if (this.kinds.has(kind.kind)) throw new Error(`There are two mutation kinds ${kind.kind}.`);
    this.kinds.set(kind.kind, kind);
  }

  find(kind: string): MutationKind | undefined {
    return this.kinds.get(kind);
  }

  all(): readonly MutationKind[] {
    return [...this.kinds.values()];
  }
}
