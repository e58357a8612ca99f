import { ApiSchema } from '@nestjs/swagger';
import { OwnIdField } from '../../../platform/http/fields/index.js';
import { WaterTestBody } from '../../surveys/index.js';
import { CreatedAt, FeatureField, IdShown, JobField, NoteField, RecordedBy, VoidedAt, VoidReason } from '../fact/fact.dto.js';

/** What was measured: each figure in the unit of its name. */
export type WaterFigures = Omit<WaterTestBody, 'takenAt'>;

@ApiSchema({ name: 'WaterReadingInput' })
export class WaterReadingBody extends WaterTestBody {
  @OwnIdField()
  id?: string | null;

  @JobField()
  jobId: string;

  @FeatureField()
  featureId?: string | null;

  @NoteField()
  note?: string | null;
}

@ApiSchema({ name: 'WaterReading', description: 'A test of the water while the work goes on, such as before fish come back. Figures that were not measured are missing.' })
export class WaterReadingView extends WaterReadingBody {
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
