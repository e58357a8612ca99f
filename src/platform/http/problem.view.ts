import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { PROBLEMS } from './problem.js';

@ApiSchema({ name: 'Violation', description: 'Where the request is wrong, and what to do.' })
export class ViolationView {
  @ApiProperty({ type: 'string', description: 'The place in the request body or query (RFC 6901); empty for the whole.', example: '/probes/readings/3/toBottom' })
  pointer: string;

  @ApiProperty({ type: 'string', description: 'What is wrong there, and what to do.' })
  detail: string;
}

@ApiSchema({ name: 'Problem', description: 'What went wrong and what to do about it (RFC 9457).' })
export class ProblemView {
  @ApiProperty({ type: 'string', format: 'uri', description: 'The kind of problem; it never changes.', example: 'urn:rillbook:problem:not-found' })
  type: string;

  @ApiProperty({ type: 'string', description: 'The kind in words.' })
  title: string;

  @ApiProperty({ type: 'integer', description: 'The HTTP status.' })
  status: number;

  @ApiProperty({ type: 'string', description: 'What happened this time, and what to do.' })
  detail: string;

  @ApiProperty({ type: 'string', description: 'The path of the request.' })
  instance: string;

  @ApiProperty({ type: 'string', enum: Object.keys(PROBLEMS), description: 'The kind as a short word.' })
  code: string;

  @ApiProperty({ type: [ViolationView], description: 'The places in the request that are wrong, if it is the request.' })
  errors: ViolationView[];
}
