import { Body, Controller } from '@nestjs/common';
import { type Actor, LEADS } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute } from '../../../platform/http/api.js';
import { TimeEntryViews } from '../time-entry-views.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';
import { TimeApprovalBody, TimeApprovalView, WithdrawApprovalBody } from './approvals.dto.js';
import { ApproveDay } from './approve-day.js';

@Controller('v1/time-approvals')
export class ApprovalsController {
  constructor(
    private readonly approveDay: ApproveDay,
    private readonly views: TimeEntryViews,
  ) {}

  @ActionRoute(TimeApprovalView, {
    path: '', roles: LEADS, summary: 'Approve a person\'s day', problems: ['period-locked'],
    description: 'A crew lead approves crew, the office everybody; nobody but the owner their own hours. What comes in or is corrected later needs approval anew.',
  })
  async approve(@CurrentActor() actor: Actor, @Body() body: TimeApprovalBody): Promise<TimeApprovalView> {
    return this.answer(actor, body, await this.approveDay.approve(actor, body));
  }

  @ActionRoute(TimeApprovalView, { path: 'withdraw', roles: LEADS, summary: 'Take the approval of a person\'s day back', problems: ['period-locked'] })
  async withdraw(@CurrentActor() actor: Actor, @Body() body: WithdrawApprovalBody): Promise<TimeApprovalView> {
    return this.answer(actor, body, await this.approveDay.withdraw(actor, body));
  }

  private async answer(actor: Actor, { personId, day }: TimeApprovalBody, rows: readonly TimeEntryEntity[]): Promise<TimeApprovalView> {
    const complete = rows.length > 0 && rows.every(({ approvedAt }) => approvedAt !== null);
    return { personId: personId.toLowerCase(), day, complete, entries: await this.views.of(actor, rows) };
  }
}
