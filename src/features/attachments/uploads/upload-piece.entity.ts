import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Some bytes of an upload. A piece begins where the one before it ended. */
@Entity('upload_piece')
export class UploadPieceEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ name: 'upload_id', type: 'uuid' })
  uploadId: string;

  @PrimaryColumn({ name: 'starts_at', type: 'integer' })
  startsAt: number;

  @Column({ type: 'uuid', default: () => 'uuidv7()' })
  id: string;

  @Column({ type: 'bytea' })
  bytes: Buffer;
}
