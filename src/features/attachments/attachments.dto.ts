import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, InstantField, NestedField, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { ReasonBody } from '../jobs/index.js';
import { ATTACHMENT_KINDS, type AttachmentKind } from './attachment.entity.js';
import { MEDIA_TYPES } from './uploads/upload-limits.js';

export const SUBJECT_KINDS = ['job', 'feature', 'equipment', 'cost'] as const;
export type SubjectKind = (typeof SUBJECT_KINDS)[number];

export class AttachmentsQuery extends ListQuery {
  @IdFilter('Only attachments of this job.')
  jobId?: string;

  @IdFilter('Only attachments of this feature.')
  featureId?: string;

  @IdFilter('Only attachments of this piece of equipment.')
  equipmentId?: string;

  @IdFilter('Only attachments of this cost.')
  costId?: string;
}

@ApiSchema({ name: 'AttachmentSubject', description: 'What an attachment belongs to.' })
export class SubjectBody {
  @ChoiceField({ description: 'What kind of thing it is.', of: SUBJECT_KINDS, example: 'job' })
  kind: SubjectKind;

  @IdField({ description: 'The thing.' })
  id: string;
}

@ApiSchema({ name: 'AttachmentInput' })
export class AttachmentBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'An upload of yours that is there whole.' })
  uploadId: string;

  @NestedField(() => SubjectBody, { description: 'What it belongs to. Only owner and estimator attach to a cost.' })
  subject: SubjectBody;

  @ChoiceField({ description: 'What it is. A receipt shows prices: only owner, estimator and whoever took it see it.', of: ATTACHMENT_KINDS, example: 'photo' })
  kind: AttachmentKind;

  @TextField({ description: 'What there is to see.', max: 500, multiline: true, optional: true, example: 'North edge after the clean-out' })
  caption?: string | null;

  @InstantField({ description: 'When it was taken, by the phone that took it.', optional: true })
  takenAt?: string | null;
}

@ApiSchema({ name: 'AttachmentVoid', description: 'What a phone pushes to void an attachment.' })
export class AttachmentVoid extends ReasonBody {
  @IdField({ description: 'The attachment.' })
  id: string;
}

@ApiSchema({ name: 'Attachment', description: 'A photo, receipt or document.' })
export class AttachmentView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The attachment.' })
  id: string;

  @ApiProperty({ type: () => SubjectBody, description: 'What it belongs to.' })
  subject: SubjectBody;

  @ApiProperty({ type: 'string', enum: ATTACHMENT_KINDS, description: 'What it is.' })
  kind: AttachmentKind;

  @ApiProperty({ type: 'string', nullable: true, description: 'What there is to see.' })
  caption: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was taken.' })
  takenAt: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The person who attached it.' })
  attachedBy: string;

  @ApiProperty({ type: 'string', enum: MEDIA_TYPES, description: 'The media type of its content.' })
  mediaType: string;

  @ApiProperty({ type: 'integer', description: 'The number of bytes of its content.' })
  size: number;

  @ApiProperty({ type: 'string', description: 'The SHA-256 of its content in hexadecimal digits; its ETag.' })
  sha256: string;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The number of pixels across; null for what is no image.' })
  width: number | null;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The number of pixels from top to bottom; null for what is no image.' })
  height: number | null;

  @ApiProperty({ type: 'boolean', description: 'Whether there is a thumbnail of it.' })
  hasThumbnail: boolean;

  @ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided; then only owner and estimator get its content.' })
  voidedAt: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' })
  voidReason: string | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When it was attached.' })
  createdAt: string;
}
