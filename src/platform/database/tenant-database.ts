import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, type QueryRunner } from 'typeorm';
import type { Actor } from '../auth/actor.js';
import { requestContext } from '../context/request-context.js';
import { isRetryable } from './database-errors.js';

const MOST_ATTEMPTS = 4;

/**
 * The only door to the tenants' rows. Every connection that it hands out is bound to one company, and row-level
 * security shows nothing else.
 *
 * Calls nest: inside `write`, further reads and writes of the same company join the same transaction, so that use
 * cases of several slices can be put together into one.
 */
@Injectable()
export class TenantDatabase {
  /**
   * Which company each pooled connection is bound to. Binding is a round trip, so it is done when a connection is
   * used for another company than before, not for each query.
   */
  private readonly boundTo = new WeakMap<object, string>();

  constructor(private readonly dataSource: DataSource) {}

  /** Runs `work` on a connection of the actor's company, without a transaction of its own. */
  async read<T>(actor: Pick<Actor, 'companyId'>, work: (manager: EntityManager) => Promise<T>): Promise<T> {
    const context = requestContext.getStore();
    if (context?.scope?.companyId === actor.companyId) return work(context.scope.manager);
    return this.withRunner(actor.companyId, (runner) => work(runner.manager));
  }

  /**
   * Runs `work` in one transaction of the actor's company; the journal names the actor.
   * `work` may run again from its beginning after a serialization failure or a deadlock, so it must have no other
   * effect than on the database.
   */
  async write<T>(actor: Actor, work: (manager: EntityManager) => Promise<T>): Promise<T> {
    const context = requestContext.getStore();
    if (context?.scope?.companyId === actor.companyId && context.scope.writing) return work(context.scope.manager);
    for (let attempt = 1; ; attempt++) {
      try {
        return await this.withRunner(actor.companyId, (runner) => this.transact(runner, actor, work));
      } catch (error) {
        if (attempt >= MOST_ATTEMPTS || !isRetryable(error)) throw error;
        await new Promise((resolve) => setTimeout(resolve, attempt * 10 * (1 + Math.random())));
      }
    }
  }

  private async transact<T>(runner: QueryRunner, actor: Actor, work: (manager: EntityManager) => Promise<T>): Promise<T> {
    const requestId = requestContext.getStore()?.requestId ?? null;
    await runner.startTransaction();
    try {
      await runner.query("SELECT set_config('rillbook.actor', $1, true), set_config('rillbook.request', $2, true)", [
        actor.personId ?? '',
        requestId ?? '',
      ]);
      const scope = { companyId: actor.companyId, manager: runner.manager, writing: true };
      const result = await requestContext.run({ requestId, scope }, () => work(runner.manager));
      await runner.commitTransaction();
      return result;
    } catch (error) {
      // On a lost connection the rollback fails too; the first error is the one to report.
      await runner.rollbackTransaction().catch(() => undefined);
      throw error;
    }
  }

  private async withRunner<T>(companyId: string, work: (runner: QueryRunner) => Promise<T>): Promise<T> {
    const runner = this.dataSource.createQueryRunner();
    try {
      const connection = (await runner.connect()) as object;
      if (this.boundTo.get(connection) !== companyId) {
        this.boundTo.delete(connection);
        await runner.query("SELECT set_config('rillbook.company', $1, false)", [companyId]);
        this.boundTo.set(connection, companyId);
      }
      return await work(runner);
    } finally {
      await runner.release();
    }
  }
}
