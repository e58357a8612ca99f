import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { BoardJobView, BoardPersonView } from './board.dto.js';

/** What a board shows of things that other slices own: names and addresses, as they stand. */
@Injectable()
export class BoardRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** The active people, by name; `limit` at most. */
  people(actor: Actor, limit: number): Promise<BoardPersonView[]> {
    return this.db.read(actor, (manager) =>
      manager.query<BoardPersonView[]>('SELECT id, name, role FROM person WHERE company_id = $1 AND active ORDER BY name, id LIMIT $2', [actor.companyId, limit]),
    );
  }

  /** These jobs, by number. */
  jobs(actor: Actor, ids: readonly string[]): Promise<BoardJobView[]> {
    return this.db.read(actor, (manager) =>
      manager.query<BoardJobView[]>(
        `SELECT j.id, j.number, j.title, j.state, s.address FROM job j LEFT JOIN site s ON s.company_id = j.company_id AND s.id = j.site_id
         WHERE j.company_id = $1 AND j.id = ANY ($2) ORDER BY length(j.number), j.number`,
        [actor.companyId, ids],
      ),
    );
  }
}
