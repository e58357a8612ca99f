import { Injectable } from '@nestjs/common';
import type { Actor } from '../auth/actor.js';
import { TenantDatabase } from '../database/tenant-database.js';

/** Numbers of documents, one row of its own for each company and kind. */
@Injectable()
export class DocumentNumbers {
  constructor(private readonly db: TenantDatabase) {}

  /**
   * The next number, from 1. Taken inside the transaction of the document that bears it: the counter stays locked
   * until that commits or rolls back, so the series has no gap and no number twice.
   */
  async next(actor: Actor, kind: 'quote' | 'job' | 'invoice'): Promise<number> {
    const rows = await this.db.write(actor, (manager) =>
      manager.query<{ last_number: number }[]>(
        `INSERT INTO document_counter (company_id, kind, last_number) VALUES ($1, $2, 1)
         ON CONFLICT (company_id, kind) DO UPDATE SET last_number = document_counter.last_number + 1
         RETURNING last_number`,
        [actor.companyId, kind],
      ),
    );
    const number = rows[0]?.last_number;
    if (number === undefined) throw new Error('the counter gave no number');
    return number;
  }
}
