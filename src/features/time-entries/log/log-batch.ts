import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { Problem } from '../../../platform/http/problem.js';
import { validateAs } from '../../../platform/http/validation.js';
import { TimeEntryBody } from '../time-entries.dto.js';
import type { TimeEntryBatchBody } from './batch.dto.js';
import { type HoursToLog, type Logged, LogManyHours } from './log-many-hours.js';
import { receiptOf } from './receipt.js';

/** Logs a list of which each item may be wrong in its own way. */
@Injectable()
export class LogBatch {
  constructor(
    private readonly many: LogManyHours,
    private readonly clock: Clock,
  ) {}

  /** One answer for each item, in their order. */
  async execute(actor: Actor, { items, sentAt }: TimeEntryBatchBody): Promise<Logged[]> {
    const now = this.clock.now();
    const read = await Promise.all(items.map((item) => readHours(item, sentAt ?? null, now)));
    const logged = await this.many.execute(actor, read.filter((item): item is HoursToLog => !(item instanceof Problem)));
    let next = 0;
    return read.map((item) => (item instanceof Problem ? item : (logged[next++] ?? new Error('Hours were logged without an answer.'))));
  }
}

async function readHours(item: unknown, sentAt: string | null, receivedAt: Date): Promise<HoursToLog | Problem> {
  try {
    const body = await validateAs(TimeEntryBody, item);
    return { body, receipt: receiptOf({ ...body, sentAt: body.sentAt ?? sentAt }, receivedAt) };
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
