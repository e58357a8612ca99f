import { ApiSchema } from '@nestjs/swagger';
import { UNITS, type Unit } from '../../../domain/quantity/index.js';
import { ChoiceField, DecimalField, IdField, InstantField, OwnIdField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';

@ApiSchema({ name: 'MaterialUseInput' })
export class MaterialUseBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @InstantField({ description: 'When it was used.' })
  usedAt: string;

  @IdField({ description: 'The part of the catalog; left out for what is not in it.', optional: true })
  partId?: string | null;

  @TextField({ description: 'What it was; a part\'s name unless told, and needed without one.', max: 300, optional: true, example: 'River gravel, washed' })
  description?: string | null;

  @DecimalField({ description: 'How much, in the unit named beside it, as a decimal string.', min: '0', max: '1000000', scale: 6, above: true, example: '12.5' })
  quantity: string;

  @ChoiceField({ description: 'The unit of the quantity; a part\'s own, which may be left out.', of: UNITS, optional: true, example: 'each' })
  unit?: Unit | null;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'MaterialUse', description: 'Material that went into the work. What it cost is not told here.' })
export class MaterialUseView extends MaterialUseBody {
  @IdShown('The record.')
  declare id: string;

  declare featureId: string | null;
  declare note: string | null;

  @RecordedBy()
  recordedBy: string | null;

  @VoidedAt()
  voidedAt: string | null;

  @VoidReason()
  voidReason: string | null;

  @CreatedAt()
  createdAt: string;
}
