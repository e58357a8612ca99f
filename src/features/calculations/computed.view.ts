import { ApiProperty } from '@nestjs/swagger';
import { WorkingView } from '../../platform/http/working.view.js';

/** What every calculation answers besides its figures. */
export abstract class ComputedView {
  @ApiProperty({ type: WorkingView, description: 'How the figures came about, each step in its own unit.' })
  working: WorkingView;

  @ApiProperty({ type: [String], description: 'What to be careful about: a value outside a formula\'s range, an assumption, a hazard.' })
  warnings: string[];
}
