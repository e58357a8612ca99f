import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The password of a person; its id is the person's. */
@Entity('credential')
export class CredentialEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'password_hash', type: 'text' })
  passwordHash: string;

  @Column({ name: 'changed_at', type: 'timestamptz', default: () => 'now()' })
  changedAt: Date;
}
