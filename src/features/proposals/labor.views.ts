import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { QuoteLineWorkingView } from '../quotes/index.js';

@ApiSchema({ name: 'ProposedLabor', description: 'A labor item with the hours it comes to. The draft has the same items as a quote takes them.' })
export class ProposedLaborView {
  @ApiProperty({ type: 'string', description: 'The cost code.' })
  costCode: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The labor rule in force on the survey\'s date.' })
  ruleId: string;

  @ApiProperty({ type: 'string', description: 'What is done.' })
  description: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'How many (each), for a rule that counts; null where the rule takes its quantity from the survey.' })
  quantity: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The hours, as a quote would plan them: by the rule, with the survey\'s access factor, rounded up to the company\'s increment. Null when the rule can not be applied to this survey; a warning says why, and the draft leaves the item out.' })
  hours: string | null;

  @ApiProperty({ type: QuoteLineWorkingView, nullable: true, description: 'How the hours came about; null without hours.' })
  working: QuoteLineWorkingView | null;
}
