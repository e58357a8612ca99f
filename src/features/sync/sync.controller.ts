import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiBody, ApiResponse } from '@nestjs/swagger';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { common } from '../../platform/http/api.js';
import { PullChanges } from './pull/pull-changes.js';
import { PullQuery, PullView } from './pull/pull.dto.js';
import { pulledKindsAsTable } from './pull/pulled-kinds.js';
import { PushBody, PushView } from './push/push.dto.js';
import { pushedKindsAsTable } from './push/pushed-kinds.js';
import { PushMutations } from './push/push-mutations.js';

@Controller('v1/sync')
export class SyncController {
  constructor(
    private readonly pushing: PushMutations,
    private readonly pulling: PullChanges,
  ) {}

  @Post('push')
  @HttpCode(200)
  @ApiBody({ type: PushBody, required: true })
  @ApiResponse({ status: 200, description: 'Each mutation has its outcome.', type: PushView })
  @(common(
    {
      roles: EVERYONE,
      summary: 'Send what was done on a phone',
      description: 'May be sent again, in whole or in part, as often as it takes: a mutation has one effect, and its outcome is kept with the effect. One that is refused does not block the others, except those that name it in `dependsOn`. What happened is taken also for a job that the person is not on any more.\n\nThe `body` of each kind, and who may push it:\n\n' + pushedKindsAsTable(),
    },
    ['malformed-request', 'invalid-input', 'body-too-large', 'wrong-media-type'],
  ))
  push(@CurrentActor() actor: Actor, @Body() body: PushBody): Promise<PushView> {
    return this.pushing.execute(actor, body);
  }

  @Get('pull')
  @ApiResponse({ status: 200, description: 'A page of changes.', type: PullView })
  @(common(
    {
      roles: EVERYONE,
      summary: 'Get what changed',
      description: 'Without a cursor everything that this person keeps, then what changes. The office keeps all jobs; a crew lead and crew keep those whose crew they are on, crew of the hours only their own. Coming on a job brings it, leaving it removes it. Never a price, a cost or a wage. Ask again while `more` is true; a row that was pushed comes back a moment later.\n\n' + pulledKindsAsTable(),
      problems: ['cursor-expired'],
    },
    ['invalid-input'],
  ))
  pull(@CurrentActor() actor: Actor, @Query() query: PullQuery): Promise<PullView> {
    return this.pulling.execute(actor, query);
  }
}
