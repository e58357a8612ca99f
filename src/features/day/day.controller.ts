import { createHash } from 'node:crypto';
import { Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ReadRoute } from '../../platform/http/api.js';
import { Reply } from '../../platform/http/reply.js';
import { DayQuery } from './day.dto.js';
import { DayService } from './day.service.js';
import { DaySheetView } from './day.view.js';

@Controller('v1/day')
export class DayController {
  constructor(private readonly days: DayService) {}

  @ReadRoute(DaySheetView, {
    path: '', roles: EVERYONE, summary: 'Read the sheet of a day', problems: ['invalid-input', 'not-found'],
    description: 'One request for a weak signal: ask again with If-None-Match, and an unchanged day answers 304 without a body. Crew see their own day.',
  })
  async read(@CurrentActor() actor: Actor, @Query() query: DayQuery): Promise<Reply<DaySheetView>> {
    const sheet = await this.days.find(actor, query);
    // The sheet has no version: it is put together from many rows, so its tag is that of what it says; a weak one, since
    // the same is sent compressed and plain.
    const etag = `W/"${createHash('sha256').update(JSON.stringify(sheet)).digest('base64url').slice(0, 22)}"`;
    return new Reply(sheet, null, { etag, 'cache-control': 'private, no-cache' });
  }
}
