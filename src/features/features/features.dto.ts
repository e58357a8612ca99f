import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { ChoiceField, IdField, IntegerField, OwnIdField, TextField } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { FEATURE_KINDS, type FeatureKind } from './feature-kinds.js';

@ApiSchema({ name: 'FeatureInput' })
export class FeatureBody {
  @OwnIdField()
  id?: string | null;

  @IdField({ description: 'The site where it is.' })
  siteId: string;

  @ChoiceField({ description: 'What it is.', of: FEATURE_KINDS, example: 'pond' })
  kind: FeatureKind;

  @TextField({ description: 'What people call it.', max: 200, example: 'Lower pond' })
  name: string;

  @IntegerField({ description: 'The year it was built, where somebody knows.', min: 1700, max: 2200, optional: true, example: 2009 })
  builtYear?: number | null;
}

@ApiSchema({ name: 'Feature', description: 'A pond, a stream, a waterfall or a basin at a site.' })
export class FeatureView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The feature.' })
  id: string;

  @ApiProperty({ type: 'string', format: 'uuid', description: 'The site where it is.' })
  siteId: string;

  @ApiProperty({ type: 'string', enum: FEATURE_KINDS, description: 'What it is.' })
  kind: FeatureKind;

  @ApiProperty({ type: 'string', description: 'What people call it.' })
  name: string;

  @ApiProperty({ type: 'integer', nullable: true, description: 'The year it was built.' })
  builtYear: number | null;

  @ApiProperty({ type: 'string', format: 'date-time', description: 'When the feature was entered.' })
  createdAt: string;
}

export class FeatureListQuery extends ListQuery {
  @IdFilter('Only the features of this site.')
  siteId?: string;
}
