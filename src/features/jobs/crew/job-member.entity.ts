import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A person on the crew of a job, now or once. */
@Entity('job_member')
export class JobMemberEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid', default: () => 'uuidv7()' })
  id: string;

  @Column({ type: 'integer', default: 1 })
  version: number;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  /** null while the person is on the crew. */
  @Column({ name: 'left_at', type: 'timestamptz', nullable: true })
  leftAt: Date | null;
}
