import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../../domain/decimal.js';
import { DateColumn, DecimalColumn } from '../../../platform/database/columns.js';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';
import type { Weekday } from '../work-calendar.js';

/** When workweeks begin and from how many hours on overtime is due, in force from a date. */
@Entity('work_week_policy')
export class WorkWeekPolicyEntity extends ResourceEntity {
  /** Of two policies with the same date, the one made last is in force. Given by the database. */
  @Column({ name: 'made_order', type: 'bigint', insert: false, update: false })
  madeOrder: string;

  @Column({ name: 'starts_on', type: 'text' })
  startsOn: Weekday;

  @Column({ name: 'starts_at', type: 'text' })
  startsAt: string;

  @DecimalColumn('weekly_overtime_hours', 7, 4)
  weeklyOvertimeHours: Decimal;

  @DecimalColumn('daily_overtime_hours', 7, 4, { nullable: true })
  dailyOvertimeHours: Decimal | null;

  @DateColumn('effective_from')
  effectiveFrom: string;
}
