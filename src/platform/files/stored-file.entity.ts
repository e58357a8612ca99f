import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The bytes of a document, named by their SHA-256. */
@Entity('stored_file')
export class StoredFileEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'bytea' })
  sha256: Buffer;

  @Column({ type: 'uuid', default: () => 'uuidv7()' })
  id: string;

  @Column({ name: 'media_type', type: 'text' })
  mediaType: string;

  @Column({ type: 'bytea' })
  bytes: Buffer;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;
}
