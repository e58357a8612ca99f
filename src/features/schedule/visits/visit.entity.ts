import { Column, Entity } from 'typeorm';
import { DateColumn } from '../../../platform/database/columns.js';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

export const VISIT_STATES = ['planned', 'cancelled'] as const;
export type VisitState = (typeof VISIT_STATES)[number];

/** A stay of some people at the site of a job. */
@Entity('visit')
export class VisitEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @DateColumn('day')
  day: string;

  /** HH:MM by the site's clocks. */
  @Column({ name: 'start_time', type: 'text' })
  startTime: string;

  @Column({ name: 'length_minutes', type: 'integer' })
  lengthMinutes: number;

  /** The site's zone, as the job has it. */
  @Column({ name: 'time_zone', type: 'text' })
  timeZone: string;

  @Column({ name: 'starts_at', type: 'timestamptz' })
  startsAt: Date;

  @Column({ name: 'ends_at', type: 'timestamptz' })
  endsAt: Date;

  @Column({ type: 'text', array: true })
  bring: string[];

  @Column({ type: 'text', nullable: true })
  note: string | null;

  @Column({ type: 'text', default: 'planned' })
  state: VisitState;

  @Column({ name: 'cancel_reason', type: 'text', nullable: true })
  cancelReason: string | null;

  /** The last change of the visit or of who comes. */
  @Column({ name: 'changed_at', type: 'timestamptz' })
  changedAt: Date;
}
