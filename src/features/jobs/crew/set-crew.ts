import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { notFound, noSuchReference, staleVersion } from '../../../platform/http/problems.js';
import { JobsRepository } from '../jobs.repository.js';
import { JobCrew } from './job-crew.js';

/** The crew of a job as one thing that is read and put as a whole. */
export interface Crew {
  readonly personIds: readonly string[];
  /** Rises with every coming and going, since members are marked as gone and never taken away; 0 before the first. */
  readonly version: number;
}

@Injectable()
export class SetCrew {
  constructor(
    private readonly db: TenantDatabase,
    private readonly jobs: JobsRepository,
    private readonly crew: JobCrew,
  ) {}

  /** @throws Problem 404, alike for a job of another company and for none */
  async read(actor: Actor, jobId: string): Promise<Crew> {
    if ((await this.jobs.find(actor, { id: jobId })) === null) throw notFound('job');
    return this.crewOf(actor, jobId);
  }

  /**
   * Makes the crew these people; may be repeated.
   * @param version the crew that the caller saw, or null when it does not matter
   * @throws Problem 404, 412 for another crew than that, 422 at /personIds/… for a person who is not there
   */
  execute(actor: Actor, jobId: string, named: readonly string[], version: number | null): Promise<Crew> {
    const wanted = named.map((id) => id.toLowerCase());
    return this.db.write(actor, async (manager) => {
      // Held, so that of two who put a crew at once the second sees the first's.
      if ((await this.jobs.lock(actor, jobId)) === null) throw notFound('job');
      const before = await this.crewOf(actor, jobId);
      if (version !== null && version !== before.version) throw staleVersion('crew', before.version);
      const there = await manager.query<{ id: string }[]>('SELECT id FROM person WHERE company_id = $1 AND id = ANY ($2)', [actor.companyId, wanted]);
      const missing = wanted.findIndex((id) => !there.some((person) => person.id === id));
      if (missing >= 0) throw noSuchReference(`/personIds/${missing}`, 'person');
      const leaving = before.personIds.filter((id) => !wanted.includes(id));
      if (leaving.length > 0) await this.crew.leave(actor, jobId, leaving);
      if (wanted.length > 0) await this.crew.join(actor, jobId, wanted);
      return this.crewOf(actor, jobId);
    });
  }

  private async crewOf(actor: Actor, jobId: string): Promise<Crew> {
    const [row] = await this.db.read(actor, (manager) =>
      manager.query<Crew[]>(
        `SELECT coalesce(array_agg(person_id ORDER BY id) FILTER (WHERE left_at IS NULL), '{}') AS "personIds", coalesce(sum(version), 0)::int AS version
         FROM job_member WHERE company_id = $1 AND job_id = $2`,
        [actor.companyId, jobId],
      ),
    );
    return row ?? { personIds: [], version: 0 };
  }
}
