import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { noSuchReference } from '../../../platform/http/problems.js';
import { CompaniesService } from '../../companies/index.js';
import { PeopleService } from '../../people/index.js';
import { LockedPeriod } from '../lock/locked-period.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';
import { type DayOfPerson, ApprovalsRepository } from './approvals.repository.js';
import type { TimeApprovalBody, WithdrawApprovalBody } from './approvals.dto.js';
import { requireMayApprove } from './approvals.policy.js';

/** Says of a person's day that its hours are right, or takes that back. */
@Injectable()
export class ApproveDay {
  constructor(
    private readonly db: TenantDatabase,
    private readonly approvals: ApprovalsRepository,
    private readonly people: PeopleService,
    private readonly companies: CompaniesService,
    private readonly lockedPeriod: LockedPeriod,
    private readonly clock: Clock,
  ) {}

  /**
   * Hours that come in or are corrected afterwards are not approved by it; repeated, it approves those too.
   * @returns the hours of the day, earliest first
   * @throws Problem 403 or 422 at /personId, 409 for a locked day
   */
  approve(actor: Actor, body: TimeApprovalBody): Promise<TimeEntryEntity[]> {
    return this.onDay(actor, body, (day) => this.approvals.approve(actor, day, this.clock.now()));
  }

  /** @throws as `approve` */
  withdraw(actor: Actor, body: WithdrawApprovalBody): Promise<TimeEntryEntity[]> {
    return this.onDay(actor, body, (day) => this.approvals.withdraw(actor, day, this.clock.now(), body.reason));
  }

  private onDay(actor: Actor, body: TimeApprovalBody, work: (day: DayOfPerson) => Promise<void>): Promise<TimeEntryEntity[]> {
    return this.db.write(actor, async () => {
      const personId = body.personId.toLowerCase();
      const person = (await this.people.findMany(actor, [personId])).get(personId);
      if (person === undefined) throw noSuchReference('/personId', 'person');
      requireMayApprove(actor, person);
      const { timeZone } = await this.companies.current(actor);
      const date = Temporal.PlainDate.from(body.day);
      const day = { personId, from: startOf(date, timeZone), until: startOf(date.add({ days: 1 }), timeZone) };
      (await this.lockedPeriod.hold(actor)).requireOpen({ startedAt: day.from });
      await work(day);
      return this.approvals.entriesOf(actor, day);
    });
  }
}

function startOf(date: Temporal.PlainDate, timeZone: string): Date {
  return new Date(date.toZonedDateTime(timeZone).epochMilliseconds);
}
