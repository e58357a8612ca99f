import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Caution, Checked } from '../../../../domain/trade/safety/index.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'Caution', description: 'Something to be careful about; never a permission.' })
export class CautionView implements Caution {
  @ApiProperty({ type: 'string', description: 'What it is about.', example: 'Excavation' })
  topic: string;

  @ApiProperty({ type: 'string', description: 'What to be careful about.' })
  text: string;

  @ApiProperty({ type: 'string', description: 'The rule or publication that it leans on.', example: '29 CFR 1926.651(j)(2)' })
  source: string;
}

@ApiSchema({ name: 'Cautions', description: 'Cautions, the last of which defers to local code and licensed practice.' })
export class CautionsView extends ComputedView {
  @ApiProperty({ type: [CautionView], description: 'The cautions; the last one says who decides.' })
  cautions: CautionView[];
}

export function toCautionsView({ cautions, steps }: Checked, rule: string): CautionsView {
  return { cautions, working: { rule, inputs: [], steps }, warnings: [] };
}
