import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { IdField, TextField } from '../../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../../platform/http/lists.js';
import { ReasonBody } from '../../jobs/index.js';

/** What every fact is sent with. */
export interface FactRequest {
  id?: string | null;
  jobId: string;
  featureId?: string | null;
  note?: string | null;
}

/** What every fact is answered with, beside what it was sent with. */
export interface FactRecord {
  id: string;
  jobId: string;
  featureId: string | null;
  note: string | null;
  recordedBy: string | null;
  voidedAt: string | null;
  voidReason: string | null;
  createdAt: string;
}

export class FactsQuery extends ListQuery {
  @IdFilter('Only those of this job.')
  jobId?: string;

  @IdFilter('Only those at this pond, stream or waterfall.')
  featureId?: string;
}

@ApiSchema({ name: 'FactVoid', description: 'What a phone pushes to void a record.' })
export class FactVoid extends ReasonBody {
  @IdField({ description: 'The record.' })
  id: string;
}

export const JobField = (): PropertyDecorator => IdField({ description: 'The job, in whatever state it is: what happened is taken down.' });
export const FeatureField = (): PropertyDecorator => IdField({ description: 'The pond, stream or waterfall, at the job\'s site; the job\'s own unless told.', optional: true });
export const NoteField = (): PropertyDecorator => TextField({ description: 'What is worth knowing about it.', max: 1000, multiline: true, optional: true });

export const IdShown = (description: string): PropertyDecorator => ApiProperty({ type: 'string', format: 'uuid', description, required: true, nullable: false });
export const PhotosMissing = (): PropertyDecorator => ApiProperty({ type: 'array', items: { type: 'string', format: 'uuid' }, description: 'Those of the named attachments that have not arrived yet.' });
export const RecordedBy = (): PropertyDecorator => ApiProperty({ type: 'string', format: 'uuid', nullable: true, description: 'Who took it down; null for the service itself.' });
export const CreatedAt = (): PropertyDecorator => ApiProperty({ type: 'string', format: 'date-time', description: 'When the service got it.' });
export const VoidedAt = (): PropertyDecorator => ApiProperty({ type: 'string', format: 'date-time', nullable: true, description: 'When it was voided; what is void counts for nothing.' });
export const VoidReason = (): PropertyDecorator => ApiProperty({ type: 'string', nullable: true, description: 'Why it was voided.' });
