import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { LaborItemBody, OtherItemBody, PartItemBody, SectionBody } from '../quotes/index.js';

@ApiSchema({ name: 'ProposedDraft', description: 'The suggestions as POST /v1/quotes takes them: add a title and send it, whole or in part.' })
export class ProposedDraftView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The survey.' })
  surveyId: string;

  @ApiProperty({ type: () => [SectionBody], description: 'A section for each scope that has items; its key is the scope\'s name.' })
  sections: SectionBody[];

  @ApiProperty({ type: () => [LaborItemBody], description: 'The labor items whose hours can be computed.' })
  labor: LaborItemBody[];

  @ApiProperty({ type: () => [PartItemBody], description: 'The suggested parts.' })
  parts: PartItemBody[];

  @ApiProperty({ type: () => [OtherItemBody], description: 'Always empty: disposal, rental and the like are the estimator\'s.' })
  other: OtherItemBody[];
}
