import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { entityPage } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { PartCostEntity } from './part-cost.entity.js';
import type { PartEntity } from './part.entity.js';

@Injectable()
export class PartCostsRepository {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
  ) {}

  /** Notes what the part costs from this version of it on. */
  async record(actor: Actor, part: PartEntity): Promise<void> {
    const { companyId, id, version, unitCost, currency } = part;
    await this.db.write(actor, (manager) =>
      manager.insert(PartCostEntity, { companyId, partId: id, partVersion: version, unitCost, currency, recordedAt: this.clock.now(), recordedBy: actor.personId }),
    );
  }

  /** Newest first. */
  async list(actor: Actor, partId: string, query: ListQuery): Promise<Page<PartCostEntity>> {
    return this.db.read(actor, (manager) => entityPage(manager, PartCostEntity, query, { companyId: actor.companyId, partId }));
  }
}
