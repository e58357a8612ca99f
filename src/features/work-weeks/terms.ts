import { Decimal } from '../../domain/decimal.js';
import type { OvertimeThresholds } from '../../domain/worktime/week/index.js';
import type { CompanyEntity } from '../companies/index.js';
import type { BurdenRateEntity } from './burden/burden-rate.entity.js';
import type { WorkWeekPolicyEntity } from './policy/work-week-policy.entity.js';
import type { WeekAnchor, WorkWeek } from './work-calendar.js';

/** @see 29 CFR 778.102: overtime over 40 hours in the week, no daily rule */
const FEDERAL: OvertimeThresholds = { weeklyHours: new Decimal(40), dailyHours: null };

/** What a company pays by, whatever the week. */
export class Terms {
  readonly anchor: WeekAnchor;
  readonly currency: string;
  /** Whether a week can depend on what was earned earlier in its year. */
  readonly capped: boolean;
  /** Whether it can matter on which day of a week work was. */
  readonly cut: 'days' | 'weeks';

  /**
   * @param policies the one that counts first
   * @param rates by code, the one that counts first
   */
  constructor(
    company: Pick<CompanyEntity, 'currency' | 'timeZone'>,
    private readonly policies: readonly WorkWeekPolicyEntity[],
    private readonly rates: readonly BurdenRateEntity[],
  ) {
    const { startsOn = 'monday', startsAt = '00:00' } = policies[0] ?? {};
    this.anchor = { timeZone: company.timeZone, startsOn, startsAt };
    this.currency = company.currency;
    this.cut = policies.some((policy) => policy.dailyOvertimeHours !== null) ? 'days' : 'weeks';
    this.capped = rates.some((rate) => rate.yearlyWageCap !== null);
  }

  thresholdsOf(week: WorkWeek): OvertimeThresholds {
    const policy = this.policies.find(({ effectiveFrom }) => effectiveFrom <= week.firstDay);
    return policy === undefined ? FEDERAL : { weeklyHours: policy.weeklyOvertimeHours, dailyHours: policy.dailyOvertimeHours };
  }

  /** The rates in force on the week's last day; none means people's own percentages. */
  burdenOf(week: WorkWeek): BurdenRateEntity[] {
    const inForce = new Map<string, BurdenRateEntity>();
    for (const rate of this.rates) {
      if (rate.effectiveFrom <= week.lastDay && !inForce.has(rate.code)) inForce.set(rate.code, rate);
    }
    return [...inForce.values()].filter((rate) => rate.percent.gt(0));
  }
}
