import type { EntityManager, QueryDeepPartialEntity } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../auth/actor.js';
import { entityPage, entityRows } from '../database/entity-rows.js';
import type { TenantDatabase } from '../database/tenant-database.js';
import type { ListQuery, Page } from '../http/lists.js';
import { idTaken, notFound, staleVersion } from '../http/problems.js';
import { requestDigest } from './digest.js';
import type { ResourceEntity } from './resource-entity.js';

/** A row, and whether this call made it or an earlier one with the same id and body did. */
export interface Made<E> {
  readonly row: E;
  readonly created: boolean;
}

/**
 * The four things that every resource does the same way: make once, read, list by key, change at a version.
 * A slice's repository holds one and adds its own queries.
 */
export class ResourceStore<E extends ResourceEntity> {
  /** @param what the resource in words, as errors name it: "customer" */
  constructor(
    private readonly db: TenantDatabase,
    private readonly entity: new () => E,
    private readonly what: string,
  ) {}

  /**
   * Inserts the row unless the id is there already.
   * @param request the body as the client sent it, with its `id` or none
   * @throws Problem 409 when the id was used with another body
   */
  async create(actor: Actor, request: { id?: string | null }, values: Omit<QueryDeepPartialEntity<E>, keyof ResourceEntity>): Promise<Made<E>> {
    return this.db.write(actor, async (manager) => {
      const before = await this.madeBefore(actor, request);
      if (before !== null) return { row: before, created: false };
      const id = request.id ?? uuidv7();
      const row = { ...values, id, companyId: actor.companyId, createDigest: requestDigest(request) } as unknown as QueryDeepPartialEntity<E>;
      // Of two equal creates at once, the second breaks the primary key; its transaction then runs again and finds the first.
      await manager.createQueryBuilder().insert().into(this.entity).values(row).updateEntity(false).execute();
      return { row: await this.findWith(manager, actor, id), created: true };
    });
  }

  /**
   * The result of an earlier create with this id, if there was one: for use cases that do more than one insert.
   * @throws Problem 409 when the id was used with another body
   */
  async madeBefore(actor: Actor, request: { id?: string | null }): Promise<E | null> {
    const id = request.id;
    if (id === undefined || id === null) return null;
    const there = await this.db.read(actor, (manager) => this.row(manager, actor, id));
    if (there !== null && !requestDigest(request).equals(there.createDigest ?? Buffer.alloc(0))) throw idTaken(this.what, id);
    return there;
  }

  /** @throws Problem 404, alike for a row of another company and for none */
  async find(actor: Actor, id: string): Promise<E> {
    return this.db.read(actor, (manager) => this.findWith(manager, actor, id));
  }

  /** Those that are there, by id; one statement. */
  async findMany(actor: Actor, ids: readonly string[]): Promise<Map<string, E>> {
    const rows = await this.db.read(actor, (manager) => entityRows(manager, this.entity, 'WHERE company_id = $1 AND id = ANY ($2)', [actor.companyId, ids]));
    return new Map(rows.map((row) => [row.id, row]));
  }

  /** The row, locked until the transaction ends. @throws Problem 404 */
  async lock(actor: Actor, id: string): Promise<E> {
    return this.db.write(actor, async (manager) => {
      const row = await this.row(manager, actor, id, 'FOR UPDATE');
      if (row === null) throw notFound(this.what);
      return row;
    });
  }

  /** Newest first; `filter` fields that are undefined do not filter. */
  async list(actor: Actor, query: ListQuery, filter: Partial<Record<keyof E & string, unknown>> = {}): Promise<Page<E>> {
    return this.db.read(actor, (manager) => entityPage(manager, this.entity, query, { companyId: actor.companyId, ...filter }));
  }

  /**
   * Changes the row if it still has this version.
   * @throws Problem 404, or 412 when somebody else changed it since
   */
  async update(actor: Actor, id: string, version: number, values: Omit<QueryDeepPartialEntity<E>, keyof ResourceEntity>): Promise<E> {
    return this.db.write(actor, async (manager) => {
      const result = await manager
        .createQueryBuilder()
        .update(this.entity)
        .set({ ...values, version: () => 'version + 1' })
        .where('company_id = :companyId AND id = :id AND version = :version', { companyId: actor.companyId, id, version })
        .execute();
      const there = await this.findWith(manager, actor, id);
      if (result.affected !== 1) throw staleVersion(this.what, there.version);
      return there;
    });
  }

  private async findWith(manager: EntityManager, actor: Actor, id: string): Promise<E> {
    const row = await this.row(manager, actor, id);
    if (row === null) throw notFound(this.what);
    return row;
  }

  private async row(manager: EntityManager, actor: Actor, id: string, lock = ''): Promise<E | null> {
    const [row] = await entityRows(manager, this.entity, `WHERE company_id = $1 AND id = $2 ${lock}`, [actor.companyId, id]);
    return row ?? null;
  }
}
