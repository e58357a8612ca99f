import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { UNITS } from '../../domain/quantity/index.js';
import { WorkingView } from '../../platform/http/working.view.js';

@ApiSchema({ name: 'TakeoffFigure', description: 'A computed quantity with its unit and how it came about.' })
export class TakeoffFigure {
  @ApiProperty({ type: 'number', description: 'The number at full precision, in the unit named beside it.' })
  value: number;

  @ApiProperty({ type: 'string', enum: [...UNITS], description: 'The unit.' })
  unit: string;

  @ApiProperty({ type: WorkingView, description: 'How the number came about.' })
  working: WorkingView;
}
