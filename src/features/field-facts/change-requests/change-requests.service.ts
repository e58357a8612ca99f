import { Injectable } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { stateConflict } from '../../../platform/http/problems.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import { type ChangeRequestAnswerBody, ChangeRequestBody, type ChangeRequestView } from './change-request.dto.js';
import { ChangeRequestEntity } from './change-request.entity.js';

@Injectable()
export class ChangeRequestsService extends FactService<ChangeRequestEntity, ChangeRequestBody, ChangeRequestView> {
  readonly kind: FactKind<ChangeRequestEntity, ChangeRequestBody> = {
    name: 'change-request', mutation: 'change-request.add', table: 'change_request', what: 'change request', entity: ChangeRequestEntity, body: ChangeRequestBody, roles: EVERYONE,
  };

  /**
   * The same answer again changes nothing.
   * @param base the version that it was decided on, when it was decided away from the service
   * @throws Problem 404, 409 when it is void or was answered otherwise, 412 when more was said of it since `base`
   */
  answer(actor: Actor, id: string, { decision, answer = null }: ChangeRequestAnswerBody, base?: number): Promise<ChangeRequestEntity> {
    return this.db.write(actor, async () => {
      const row = await this.store.lock(actor, id);
      this.requireUpToDate(row, base);
      if (row.voidedAt !== null) throw stateConflict('The request is void and needs no answer.');
      if (row.decision === decision && row.answer === answer) return row;
      if (row.decision !== null) throw stateConflict(`The request was ${row.decision === 'declined' ? 'declined' : 'taken up'} before. Take the change down as a new request.`);
      return this.change(actor, row, { decision, answer, answeredAt: this.clock.now(), answeredVersion: row.version + 1, answeredBy: actor.personId });
    });
  }

  protected override lastSaid(row: ChangeRequestEntity): number {
    return row.voidedAt === null ? (row.answeredVersion ?? 1) : row.version;
  }

  protected columns(_actor: Actor, { foundAt, description, attachmentIds }: ChangeRequestBody): OwnColumns<ChangeRequestEntity> {
    return { happenedAt: toInstant(foundAt), description, attachmentIds: (attachmentIds ?? []).map((id) => id.toLowerCase()), photosMissing: [], decision: null, answer: null, answeredAt: null, answeredVersion: null, answeredBy: null };
  }

  protected shown({ happenedAt, description, attachmentIds, photosMissing, decision, answer, answeredAt, answeredBy }: ChangeRequestEntity): Omit<ChangeRequestView, keyof FactRecord> {
    return { foundAt: happenedAt.toISOString(), description, attachmentIds, photosMissing, decision, answer, answeredAt: answeredAt?.toISOString() ?? null, answeredBy };
  }
}
