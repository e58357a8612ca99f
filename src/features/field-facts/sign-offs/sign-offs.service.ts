import { Injectable } from '@nestjs/common';
import { type Actor, LEADS } from '../../../platform/auth/actor.js';
import { toInstant } from '../../../platform/clock/device-time.js';
import { invalidInput } from '../../../platform/http/problems.js';
import type { FactRecord } from '../fact/fact.dto.js';
import { type FactKind, FactService, type OwnColumns } from '../fact/fact.service.js';
import { SignOffBody, type SignOffView } from './sign-off.dto.js';
import { SignOffEntity } from './sign-off.entity.js';

@Injectable()
export class SignOffsService extends FactService<SignOffEntity, SignOffBody, SignOffView> {
  readonly kind: FactKind<SignOffEntity, SignOffBody> = { name: 'sign-off', mutation: 'sign-off.record', table: 'sign_off', what: 'sign-off', entity: SignOffEntity, body: SignOffBody, roles: LEADS };

  protected columns(_actor: Actor, { signedAt, signedBy, statement, drawing = null, attachmentId = null }: SignOffBody): OwnColumns<SignOffEntity> {
    if (drawing === null && attachmentId === null) throw invalidInput([{ pointer: '/drawing', detail: 'is needed, or an attachmentId: without a signature nobody signed' }]);
    return { happenedAt: toInstant(signedAt), signedBy, statement, drawing, attachmentId, photosMissing: [] };
  }

  protected shown({ happenedAt, signedBy, statement, drawing, attachmentId, photosMissing }: SignOffEntity): Omit<SignOffView, keyof FactRecord> {
    return { signedAt: happenedAt.toISOString(), signedBy, statement, drawing, attachmentId, photosMissing };
  }
}
