import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { JobMemberEntity } from './job-member.entity.js';

/** Who is on the crew of a job. What a crew person's phone keeps goes by it. */
@Injectable()
export class JobCrew {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
  ) {}

  /** Puts people on the crew; who is on it already stays so. @throws a constraint's Problem for a job or person that is not there */
  join(actor: Actor, jobId: string, personIds: readonly string[]): Promise<void> {
    return this.db.write(actor, async (manager) => {
      await manager.query(
        `INSERT INTO job_member (company_id, job_id, person_id) SELECT $1, $2, person_id FROM unnest($3::uuid[]) AS person_id
         ON CONFLICT ON CONSTRAINT uq_job_member__person_id DO UPDATE SET left_at = NULL, version = job_member.version + 1 WHERE job_member.left_at IS NOT NULL`,
        [actor.companyId, jobId, personIds],
      );
    });
  }

  /** Takes people off the crew; who is not on it stays so. */
  leave(actor: Actor, jobId: string, personIds: readonly string[]): Promise<void> {
    return this.db.write(actor, async (manager) => {
      await manager.query(
        'UPDATE job_member SET left_at = $4, version = version + 1 WHERE company_id = $1 AND job_id = $2 AND person_id = ANY ($3) AND left_at IS NULL',
        [actor.companyId, jobId, personIds, this.clock.now()],
      );
    });
  }

  /** The crews of many jobs in one statement, in the order of joining. */
  async of(actor: Actor, jobIds: readonly string[]): Promise<JobMemberEntity[]> {
    return this.db.read(actor, (manager) =>
      entityRows(manager, JobMemberEntity, 'WHERE company_id = $1 AND job_id = ANY ($2) AND left_at IS NULL ORDER BY job_id, id', [actor.companyId, jobIds]),
    );
  }

  /** The jobs whose crew the person is on now. */
  async jobsOf(actor: Actor, personId: string): Promise<string[]> {
    const members = await this.db.read(actor, (manager) =>
      entityRows(manager, JobMemberEntity, 'WHERE company_id = $1 AND person_id = $2 AND left_at IS NULL ORDER BY job_id', [actor.companyId, personId]),
    );
    return members.map(({ jobId }) => jobId);
  }
}
