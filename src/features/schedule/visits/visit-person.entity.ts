import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Somebody who comes to a visit, or was to come. */
@Entity('visit_person')
export class VisitPersonEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @Column({ type: 'uuid', default: () => 'uuidv7()' })
  id: string;

  @PrimaryColumn({ name: 'visit_id', type: 'uuid' })
  visitId: string;

  @PrimaryColumn({ name: 'person_id', type: 'uuid' })
  personId: string;

  @Column({ type: 'integer' })
  position: number;

  /** null while the person comes. */
  @Column({ name: 'left_at', type: 'timestamptz', nullable: true })
  leftAt: Date | null;
}
