import { Injectable } from '@nestjs/common';
import type { QueryDeepPartialEntity } from 'typeorm';
import { type Actor, LEADS, type Role } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { Problem } from '../../../platform/http/problem.js';
import { staleVersion } from '../../../platform/http/problems.js';
import type { Page } from '../../../platform/http/lists.js';
import type { ResourceEntity } from '../../../platform/resources/resource-entity.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import type { FactRecord, FactRequest, FactsQuery } from './fact.dto.js';
import type { FactEntity } from './fact.entity.js';
import { type FactPlace, FactPlaces } from './fact-places.js';

/** What sets one kind of fact apart from the others. */
export interface FactKind<E, B> {
  /** As a phone pulls it: `load`. */
  readonly name: string;
  /** As a phone pushes it: `load.record`. */
  readonly mutation: string;
  readonly table: string;
  /** In words, as errors name it. */
  readonly what: string;
  readonly entity: new () => E;
  readonly body: new () => B;
  /** Who may take it down. */
  readonly roles: readonly Role[];
}

/** The columns that a kind of fact has beside those of all facts, and the moment it happened. */
export type OwnColumns<E extends FactEntity> = Omit<E, Exclude<keyof FactEntity, 'happenedAt'>>;

/** The store knows columns by the entity, which is a type parameter here. */
type Written<E extends FactEntity> = Omit<QueryDeepPartialEntity<E>, keyof ResourceEntity>;

/** What all facts do alike: taken down once however often they are sent, read, listed, voided. */
@Injectable()
export abstract class FactService<E extends FactEntity, B extends FactRequest, V extends FactRecord> {
  abstract readonly kind: FactKind<E, B>;
  private rows: ResourceStore<E> | undefined;

  constructor(
    protected readonly db: TenantDatabase,
    private readonly places: FactPlaces,
    protected readonly clock: Clock,
  ) {}

  /** @throws Problem 400 with the field, or 422 for something named that is not there */
  protected abstract columns(actor: Actor, body: B, place: FactPlace): OwnColumns<E> | Promise<OwnColumns<E>>;

  /** The fields of its own that it is answered with. */
  protected abstract shown(row: E): Omit<V, keyof FactRecord>;

  /** @throws Problem 400 or 422 with the field, 409 when the id was used with another body */
  record(actor: Actor, body: B): Promise<Made<E>> {
    return this.db.write(actor, async () => {
      const before = await this.store.madeBefore(actor, body);
      if (before !== null) return { row: before, created: false };
      const place = await this.places.find(actor, body);
      const own = await this.columns(actor, body, place);
      const common = { jobId: place.job.id, featureId: place.featureId, note: body.note ?? null, recordedBy: actor.personId };
      return this.store.create(actor, body, { ...own, ...common } as unknown as Written<E>);
    });
  }

  /** @throws Problem 404 */
  find(actor: Actor, id: string): Promise<E> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: FactsQuery): Promise<Page<E>> {
    return this.store.list(actor, query, { jobId: query.jobId, featureId: query.featureId } as Partial<Record<keyof E & string, unknown>>);
  }

  /**
   * Repeated, it answers with the first reason.
   * @param base the version that it was decided on, when it was decided away from the service
   * @throws Problem 404, 403 for crew when somebody else took it down, 412 when more was said of it since `base`
   */
  void(actor: Actor, id: string, reason: string, base?: number): Promise<E> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      this.requireUpToDate(row, base);
      if (row.voidedAt !== null) return row;
      if (!LEADS.includes(actor.role) && row.recordedBy !== actor.personId) throw new Problem('not-allowed', `Crew void what they took down themselves. Ask a crew lead to void this ${this.kind.what}.`);
      const more = await this.onVoid(actor, row);
      return this.change(actor, row, { ...more, voidedAt: this.clock.now(), voidReason: reason });
    });
  }

  view(row: E): V {
    const { id, jobId, featureId, note, recordedBy, voidReason } = row;
    return { id, jobId, featureId, note, ...this.shown(row), recordedBy, voidedAt: row.voidedAt?.toISOString() ?? null, voidReason, createdAt: row.createdAt.toISOString() } as V;
  }

  /** What else is to be done when a record is voided, and what is written of it. */
  protected onVoid(_actor: Actor, _row: E): Promise<Partial<E>> {
    return Promise.resolve({});
  }

  /** The version at which somebody last said something of it. A photo that arrives makes a version too, and says nothing. */
  protected lastSaid(row: E): number {
    return row.voidedAt === null ? 1 : row.version;
  }

  /** @throws Problem 412 */
  protected requireUpToDate(row: E, base: number | undefined): void {
    if (base !== undefined && (base < this.lastSaid(row) || base > row.version)) throw staleVersion(this.kind.what, row.version);
  }

  /** Writes the few columns of a fact that may still be written. */
  protected change(actor: Actor, row: E, values: Partial<E>): Promise<E> {
    return this.store.update(actor, row.id, row.version, values as unknown as Written<E>);
  }

  protected get store(): ResourceStore<E> {
    this.rows ??= new ResourceStore(this.db, this.kind.entity, this.kind.what);
    return this.rows;
  }
}
