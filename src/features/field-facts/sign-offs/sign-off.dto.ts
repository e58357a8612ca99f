import { ApiSchema } from '@nestjs/swagger';
import { IdField, InstantField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, PhotosMissing, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';

/** Commands and numbers of a path alone: nothing that a page which shows the drawing could run or load. */
const PATH_DATA = /^[Mm][MmLlHhVvCcSsQqTtAaZzEe0-9 ,.+-]*$/;

@ApiSchema({ name: 'SignOffInput' })
export class SignOffBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @InstantField({ description: 'When it was signed.' })
  signedAt: string;

  @TextField({ description: 'Who signed, by name.', max: 200, example: 'Marta Ellingsworth' })
  signedBy: string;

  @TextField({ description: 'What was signed, word for word as the customer read it.', max: 4000, multiline: true, example: 'The work is substantially complete. Open: reset two stones at the skimmer.' })
  statement: string;

  @TextField({ description: 'The signature as the data of a path (SVG 2, chapter 9); it or `attachmentId` is needed.', max: 20_000, optional: true, example: 'M10 40 C 20 10, 40 10, 50 40 S 80 70, 90 40', pattern: { test: PATH_DATA, says: 'must be the data of a path: it begins with M, and holds commands and numbers only' } })
  drawing?: string | null;

  @IdField({ description: 'The signature as a picture: an attachment of the job, which may arrive later.', optional: true })
  attachmentId?: string | null;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'SignOff', description: 'What the customer signed at substantial completion. Whether and how it binds is for the contract and local law to say.' })
export class SignOffView extends SignOffBody {
  @IdShown('The record.')
  declare id: string;

  declare featureId: string | null;
  declare note: string | null;

  @PhotosMissing()
  photosMissing: string[];

  @RecordedBy()
  recordedBy: string | null;

  @VoidedAt()
  voidedAt: string | null;

  @VoidReason()
  voidReason: string | null;

  @CreatedAt()
  createdAt: string;
}
