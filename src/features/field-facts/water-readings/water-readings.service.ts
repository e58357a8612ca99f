import { Injectable } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { filled } from '../../../platform/http/filled.js';
import { invalidInput } from '../../../platform/http/problems.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import { WaterReadingBody, type WaterReadingView } from './water-reading.dto.js';
import { WaterReadingEntity } from './water-reading.entity.js';

@Injectable()
export class WaterReadingsService extends FactService<WaterReadingEntity, WaterReadingBody, WaterReadingView> {
  readonly kind: FactKind<WaterReadingEntity, WaterReadingBody> = {
    name: 'water-reading', mutation: 'water-reading.record', table: 'water_reading', what: 'water reading', entity: WaterReadingEntity, body: WaterReadingBody, roles: EVERYONE,
  };

  protected columns(_actor: Actor, body: WaterReadingBody): OwnColumns<WaterReadingEntity> {
    const { id: _id, jobId: _jobId, featureId: _featureId, note: _note, takenAt, ...measured } = body;
    const figures = filled(measured);
    if (Object.keys(figures).length === 0) throw invalidInput([{ pointer: '', detail: 'must hold at least one figure, such as ph or temperature' }]);
    return { happenedAt: toInstant(takenAt), figures };
  }

  protected shown({ happenedAt, figures }: WaterReadingEntity): Omit<WaterReadingView, keyof FactRecord> {
    return { takenAt: happenedAt.toISOString(), ...figures };
  }
}
