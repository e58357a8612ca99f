import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import type { Made } from '../../../platform/resources/resource-store.js';
import type { TimeEntryBody } from '../time-entries.dto.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';
import { LogManyHours } from './log-many-hours.js';
import { receiptOf } from './receipt.js';

/** Logs hours, once however often the phone sends them. */
@Injectable()
export class LogTime {
  constructor(
    private readonly many: LogManyHours,
    private readonly clock: Clock,
  ) {}

  /**
   * @throws Problem 400, 403 or 422 with the field, 409 when the person is logged elsewhere at that time, or the
   *   id was used with another body
   */
  async execute(actor: Actor, body: TimeEntryBody, receipt = receiptOf(body, this.clock.now())): Promise<Made<TimeEntryEntity>> {
    const [logged] = await this.many.execute(actor, [{ body, receipt }]);
    if (logged === undefined) throw new Error('Hours were logged without an answer.');
    if (logged instanceof Error) throw logged;
    return logged;
  }
}
