import { Injectable } from '@nestjs/common';
import { toSi } from '../../../domain/quantity/index.js';
import { EVERYONE, type Actor } from '../../../platform/auth/actor.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { invalidInput } from '../../../platform/http/problems.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import { DepthBody, type DepthView } from './depth.dto.js';
import { DepthEntity } from './depth.entity.js';

@Injectable()
export class DepthsService extends FactService<DepthEntity, DepthBody, DepthView> {
  readonly kind: FactKind<DepthEntity, DepthBody> = { name: 'depth', mutation: 'depth.record', table: 'found_depth', what: 'depth', entity: DepthEntity, body: DepthBody, roles: EVERYONE };

  protected columns(_actor: Actor, { foundAt, place, toSediment, toBottom }: DepthBody): OwnColumns<DepthEntity> {
    if (toSediment && toSi(toSediment) > toSi(toBottom)) throw invalidInput([{ pointer: '/toBottom', detail: 'must not be less than the depth to the sediment, which lies on the bottom' }]);
    return { happenedAt: toInstant(foundAt), place, toSediment: toSediment ?? null, toBottom };
  }

  protected shown({ happenedAt, place, toSediment, toBottom }: DepthEntity): Omit<DepthView, keyof FactRecord> {
    return { foundAt: happenedAt.toISOString(), place, toSediment, toBottom };
  }
}
