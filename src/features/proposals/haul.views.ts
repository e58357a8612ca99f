import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../domain/quantity/index.js';
import { QuantityBody } from '../../platform/http/fields/index.js';
import { WorkingView } from '../../platform/http/working.view.js';
import { HoursBandView } from '../calculations/index.js';
import { LaborRuleBody } from '../labor-rules/index.js';

export const HAUL_WORKS = ['digging', 'hauling', 'digging-and-hauling'] as const;
export type HaulWork = (typeof HAUL_WORKS)[number];

export const VERDICTS = ['usual', 'unusual', 'doubted', 'not-judged'] as const;
export type Verdict = (typeof VERDICTS)[number];

@ApiSchema({ name: 'HaulHours', description: 'What one way of reckoning comes to.' })
export class HaulHoursView {
  @ApiProperty({ type: 'number', nullable: true, description: 'Labor-hours for each yd3 in place, for the work of this scope, without set-up; null for a rule that does not go by the volume of sediment.' })
  hoursPerYd3: number | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The hours that a quote would plan, with set-up, fewest hours, access factor and increment; null when they can not be computed.' })
  hours: string | null;

  @ApiProperty({ type: 'string', enum: [...VERDICTS], description: 'What the band says of digging and hauling together, all scopes of this proposal that do them. `not-judged` when there is no band, or no hours for each yd3.' })
  verdict: Verdict;
}

@ApiSchema({ name: 'HaulComparison', description: 'The labor rule in force beside the hours that the way, the gate and the carrier tell, for the same sediment.' })
export class HaulComparisonView {
  @ApiProperty({ type: 'string', enum: [...HAUL_WORKS], description: 'The work that is compared: of clean-out and haul-away in one proposal, the first digs and the second hauls; one alone does both, and where the haul tells no digging there is only hauling.' })
  work: HaulWork;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The sediment in place, in yd3; null without rod readings.' })
  quantity: Quantity | null;

  @ApiProperty({ type: HaulHoursView, nullable: true, description: 'By the rule in force; null when there is none.' })
  flat: HaulHoursView | null;

  @ApiProperty({ type: HaulHoursView, description: 'By the haul cycle.' })
  cycle: HaulHoursView;

  @ApiProperty({ type: HoursBandView, nullable: true, description: 'Labor-hours for 1 yd3 by hand and barrow that are usual; null when a machine digs or carries.' })
  band: HoursBandView | null;

  @ApiProperty({ type: () => LaborRuleBody, nullable: true, description: 'The cycle as a labor rule, ready for POST /v1/labor-rules: set-up and fewest hours as in the rule in force, else none. Null when it takes more hours than a rule can hold.' })
  laborRule: LaborRuleBody | null;

  @ApiProperty({ type: WorkingView, description: 'How the hours by the cycle came about, for 1 m3.' })
  working: WorkingView;

  @ApiProperty({ type: [String], description: 'What to be careful about.' })
  warnings: string[];
}
