import { Injectable } from '@nestjs/common';
import { EVERYONE, type Actor } from '../../../platform/auth/actor.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { LoadBody, type LoadView } from './load.dto.js';
import { LoadEntity } from './load.entity.js';

@Injectable()
export class LoadsService extends FactService<LoadEntity, LoadBody, LoadView> {
  readonly kind: FactKind<LoadEntity, LoadBody> = { name: 'load', mutation: 'load.record', table: 'hauled_load', what: 'load', entity: LoadEntity, body: LoadBody, roles: EVERYONE };

  protected columns(_actor: Actor, body: LoadBody): OwnColumns<LoadEntity> {
    const { material, volume, weight, destination, ticket } = body;
    return { happenedAt: toInstant(body.hauledAt), material, loads: body.loads ?? 1, volume: volume ?? null, weight: weight ?? null, destination: destination ?? null, ticket: ticket ?? null };
  }

  protected shown({ happenedAt, material, loads, volume, weight, destination, ticket }: LoadEntity): Omit<LoadView, keyof FactRecord> {
    return { hauledAt: happenedAt.toISOString(), material, loads, volume, weight, destination, ticket };
  }
}
