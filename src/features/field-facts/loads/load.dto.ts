import { ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../domain/quantity/index.js';
import { ChoiceField, InstantField, IntegerField, OwnIdField, QuantityField, TextField } from '../../../platform/http/fields/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';
import { HAULED_MATERIALS, type HauledMaterial } from './load.entity.js';

@ApiSchema({ name: 'LoadInput' })
export class LoadBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @InstantField({ description: 'When it left.' })
  hauledAt: string;

  @ChoiceField({ description: 'What was in it.', of: HAULED_MATERIALS, example: 'sediment' })
  material: HauledMaterial;

  @IntegerField({ description: 'How many loads, as a count; 1 unless told.', min: 1, max: 500, optional: true, default: 1, example: 2 })
  loads?: number | null;

  @QuantityField({ description: 'The volume of all of them together, as heaped.', kind: 'volume', minSi: 0, maxSi: 100_000, optional: true, example: { value: 11, unit: 'yd3' } })
  volume?: Quantity | null;

  @QuantityField({ description: 'The weight of all of them together, as on the ticket.', kind: 'mass', minSi: 0, maxSi: 1e8, optional: true, example: { value: 9.4, unit: 'ton' } })
  weight?: Quantity | null;

  @TextField({ description: 'Where it went.', max: 200, optional: true, example: 'Tallgrass Compost Yard' })
  destination?: string | null;

  @TextField({ description: 'The number on the ticket. What it cost is the office\'s to enter.', max: 100, optional: true, example: 'T-20718' })
  ticket?: string | null;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'Load', description: 'Loads that left the site.' })
export class LoadView extends LoadBody {
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
