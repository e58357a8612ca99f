import { Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ReadRoute } from '../../platform/http/api.js';
import { type Reply, taggedByContent } from '../../platform/http/reply.js';
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
    return taggedByContent(sheet, { 'cache-control': 'private, no-cache' });
  }
}
