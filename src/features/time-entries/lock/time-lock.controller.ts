import { Body, Controller } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute, ReadRoute } from '../../../platform/http/api.js';
import { type Reply, tagged } from '../../../platform/http/reply.js';
import { MoveLock } from './move-lock.js';
import { TimeLockBody, TimeLockView } from './time-lock.dto.js';
import type { TimeLockEntity } from './time-lock.entity.js';

@Controller('v1/time-lock')
export class TimeLockController {
  constructor(private readonly lock: MoveLock) {}

  @ReadRoute(TimeLockView, { path: '', roles: EVERYONE, summary: 'Through which day hours are locked' })
  async read(@CurrentActor() actor: Actor): Promise<Reply<TimeLockView>> {
    return answer(await this.lock.current(actor));
  }

  @ActionRoute(TimeLockView, {
    path: '', roles: ['owner'], summary: 'Lock days, or open them again',
    description: 'Hours that count in a locked day are not corrected, voided or approved any more. Hours that come in late for one are kept as `held`, and count once the office releases them.',
  })
  async move(@CurrentActor() actor: Actor, @Body() body: TimeLockBody): Promise<Reply<TimeLockView>> {
    return answer(await this.lock.execute(actor, body.lockedThrough ?? null));
  }
}

function answer(row: TimeLockEntity | null): Reply<TimeLockView> {
  return tagged({ lockedThrough: row?.lockedThrough ?? null, lockedAt: row?.lockedAt.toISOString() ?? null, lockedBy: row?.lockedBy ?? null }, row?.version ?? 0);
}
