import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import type { Page } from '../../platform/http/lists.js';
import type { TimeEntriesQuery } from './time-entries.dto.js';
import { onlyPerson, requireMayLogFor, requireMaySee } from './time-entries.policy.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/** What is read of logged hours. */
@Injectable()
export class TimeEntriesService {
  constructor(private readonly entries: TimeEntriesRepository) {}

  /** @throws Problem 404, for crew also for hours of somebody else */
  async find(actor: Actor, id: string): Promise<TimeEntryEntity> {
    const row = await this.entries.store.find(actor, id);
    requireMaySee(actor, row);
    return row;
  }

  /** Newest first; for crew their own. @throws Problem 403 when crew ask for somebody else's */
  async list(actor: Actor, query: TimeEntriesQuery): Promise<Page<TimeEntryEntity>> {
    if (query.personId !== undefined) requireMayLogFor(actor, query.personId);
    return this.entries.store.list(actor, query, { jobId: query.jobId, personId: query.personId ?? onlyPerson(actor) ?? undefined, held: query.held === undefined ? undefined : query.held === 'true' });
  }
}
