import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { InstantField, LocalDateField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';

@ApiSchema({ name: 'InstallationInput' })
export class InstallationBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @InstantField({ description: 'When it was put in; its day in the job\'s zone is the day it was installed.' })
  installedAt: string;

  @TextField({ description: 'What it is, in a word of the trade: skimmer, pump, biological filter, doser, aerator, light, valve, or another.', max: 60, example: 'pump' })
  kind: string;

  @TextField({ description: 'Who made it.', max: 120, optional: true })
  make?: string | null;

  @TextField({ description: 'The maker\'s name for it.', max: 120, optional: true })
  model?: string | null;

  @TextField({ description: 'The number on its plate. An item at the feature with the same number is the same item: it is not entered twice.', max: 120, optional: true, example: '000-1724' })
  serialNumber?: string | null;

  @LocalDateField({ description: 'The last day of its warranty; not before the day it was installed.', optional: true, example: '2030-04-11' })
  warrantyUntil?: string | null;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'Installation', description: 'A device that was put in, and the item of equipment that it became.' })
export class InstallationView extends InstallationBody {
  @IdShown('The record.')
  declare id: string;

  declare featureId: string | null;
  declare note: string | null;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The item of equipment at the feature.' })
  equipmentId: string;

  @ApiProperty({ type: 'array', items: { type: 'string' }, description: 'What to look at: whether the item stays at the feature though the record is void.' })
  warnings: string[];

  @RecordedBy()
  recordedBy: string | null;

  @VoidedAt()
  voidedAt: string | null;

  @VoidReason()
  voidReason: string | null;

  @CreatedAt()
  createdAt: string;
}
