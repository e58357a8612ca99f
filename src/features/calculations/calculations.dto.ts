import { ApiProperty, ApiSchema } from '@nestjs/swagger';

@ApiSchema({ name: 'CalculationSummary', description: 'A computation that can be asked for.' })
export class CalculationSummaryView {
  @ApiProperty({ type: 'string', description: 'Its name in the path.', example: 'weir-flow' })
  name: string;

  @ApiProperty({ type: 'string', description: 'What it computes.' })
  title: string;

  @ApiProperty({ type: 'string', description: 'What it is good for, what it assumes, its range and its source.' })
  description: string;

  @ApiProperty({ type: 'string', description: 'The path to POST the input to.', example: '/v1/calculations/weir-flow' })
  path: string;

  @ApiProperty({ type: 'object', additionalProperties: true, description: 'The JSON Schema (2020-12) of the input, complete in itself.' })
  inputSchema: object;

  @ApiProperty({ type: 'object', additionalProperties: true, description: 'The JSON Schema (2020-12) of the output, complete in itself.' })
  outputSchema: object;
}

@ApiSchema({ name: 'CalculationList', description: 'All computations that can be asked for.' })
export class CalculationListView {
  @ApiProperty({ type: [CalculationSummaryView], description: 'The computations, by topic.' })
  items: CalculationSummaryView[];
}
