import { ApiSchema } from '@nestjs/swagger';
import { BooleanField, ChoiceField, IntegerField } from '../../platform/http/fields/index.js';
import { SCOPES, type Scope } from './scopes.js';

@ApiSchema({ name: 'ScopeSection' })
export class ScopeSectionBody {
  @ChoiceField({ description: 'The scope that the section is for; one of the proposal\'s.', of: SCOPES })
  scope: Scope;

  @IntegerField({ description: 'The phase that it is done in, from 1.', min: 1, max: 50, optional: true, default: 1 })
  phase?: number | null;

  @BooleanField({ description: 'Whether the customer may take it or leave it, outside the totals.', optional: true, default: false })
  optional?: boolean | null;
}
