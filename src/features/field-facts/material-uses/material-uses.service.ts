import { Injectable } from '@nestjs/common';
import { Decimal } from '../../../domain/decimal.js';
import type { Unit } from '../../../domain/quantity/index.js';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { invalidInput, noSuchReference } from '../../../platform/http/problems.js';
import { PartsService } from '../../catalog/index.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { FactPlaces } from '../fact/fact-places.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import { MaterialUseBody, type MaterialUseView } from './material-use.dto.js';
import { MaterialUseEntity } from './material-use.entity.js';

@Injectable()
export class MaterialUsesService extends FactService<MaterialUseEntity, MaterialUseBody, MaterialUseView> {
  readonly kind: FactKind<MaterialUseEntity, MaterialUseBody> = {
    name: 'material-use', mutation: 'material-use.record', table: 'material_use', what: 'use of material', entity: MaterialUseEntity, body: MaterialUseBody, roles: EVERYONE,
  };

  constructor(db: TenantDatabase, places: FactPlaces, clock: Clock, private readonly parts: PartsService) {
    super(db, places, clock);
  }

  protected async columns(actor: Actor, body: MaterialUseBody): Promise<OwnColumns<MaterialUseEntity>> {
    return { happenedAt: toInstant(body.usedAt), quantity: new Decimal(body.quantity), ...(await this.material(actor, body)) };
  }

  protected shown({ happenedAt, partId, description, quantity, unit }: MaterialUseEntity): Omit<MaterialUseView, keyof FactRecord> {
    return { usedAt: happenedAt.toISOString(), partId, description, quantity: quantity.toFixed(), unit: unit as Unit };
  }

  private async material(actor: Actor, { partId, description, unit }: MaterialUseBody): Promise<Pick<MaterialUseEntity, 'partId' | 'description' | 'unit'>> {
    if (!partId) {
      const missing = [...(description ? [] : ['description']), ...(unit ? [] : ['unit'])];
      if (missing.length > 0) throw invalidInput(missing.map((name) => ({ pointer: `/${name}`, detail: 'is needed for what is not a part of the catalog' })));
      return { partId: null, description: description ?? '', unit: unit ?? 'each' };
    }
    const part = (await this.parts.findMany(actor, [partId.toLowerCase()])).get(partId.toLowerCase());
    if (part === undefined) throw noSuchReference('/partId', 'part');
    if (unit && unit !== part.unit) throw invalidInput([{ pointer: '/unit', detail: `must be ${part.unit}, the unit of the part; convert the quantity, or leave the unit out` }]);
    return { partId: part.id, description: description ?? part.name, unit: part.unit };
  }
}
