import { ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../domain/quantity/index.js';
import { MAX_DEPTH_M } from '../../../domain/trade/index.js';
import { InstantField, OwnIdField, QuantityField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';

@ApiSchema({ name: 'FoundDepthInput' })
export class DepthBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @InstantField({ description: 'When it was measured.' })
  foundAt: string;

  @TextField({ description: 'Where in the pond, in words.', max: 200, example: '3 ft from the inlet, off the north bank' })
  place: string;

  @QuantityField({ description: 'From the full-water line to the top of the sediment; left out when there was none.', kind: 'length', minSi: 0, maxSi: MAX_DEPTH_M, optional: true, example: { value: 18, unit: 'in' } })
  toSediment?: Quantity | null;

  @QuantityField({ description: 'From the full-water line to the hard bottom; not less than to the sediment.', kind: 'length', minSi: 0, maxSi: MAX_DEPTH_M, example: { value: 27, unit: 'in' } })
  toBottom: Quantity;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'FoundDepth', description: 'A depth as it was found in place once the pond was opened up, to be held against the survey\'s readings.' })
export class DepthView extends DepthBody {
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
