import { ApiProperty, ApiSchema } from '@nestjs/swagger';

@ApiSchema({ name: 'WorkingValue', description: 'What went into a figure.' })
export class WorkingValueView {
  @ApiProperty({ type: 'string', description: 'What it is.', example: 'access factor' })
  name: string;

  @ApiProperty({ type: 'string', description: 'The number, in full precision, in the unit named beside it; without one it has none.', example: '1.15' })
  value: string;

  @ApiProperty({ type: 'string', required: false, description: 'The unit of the value.', example: 'yd3' })
  unit?: string;

  @ApiProperty({ type: 'string', required: false, description: 'Where the value comes from, such as a rule and its version.' })
  source?: string;
}

@ApiSchema({ name: 'WorkingStep', description: 'One line of arithmetic and its result.' })
export class WorkingStepView {
  @ApiProperty({ type: 'string', description: 'What is computed.', example: 'with access' })
  label: string;

  @ApiProperty({ type: 'string', description: 'The arithmetic.', example: '17.66 × 1.15' })
  expression: string;

  @ApiProperty({ type: 'string', description: 'The result, in full precision, in the unit named beside it.', example: '20.309' })
  value: string;

  @ApiProperty({ type: 'string', required: false, description: 'The unit of the result.', example: 'h' })
  unit?: string;
}

@ApiSchema({ name: 'Working', description: 'How a figure came about, so that anyone can recompute it.' })
export class WorkingView {
  @ApiProperty({ type: 'string', description: 'The rule applied, in words.' })
  rule: string;

  @ApiProperty({ type: [WorkingValueView], description: 'What went in, each in its own unit.' })
  inputs: WorkingValueView[];

  @ApiProperty({ type: [WorkingStepView], description: 'The arithmetic, step by step, each result in its own unit.' })
  steps: WorkingStepView[];
}
