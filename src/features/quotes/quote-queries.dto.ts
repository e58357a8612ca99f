import { ChoiceField, IntegerField, QueryInteger } from '../../platform/http/fields/index.js';
import { IdFilter, ListQuery } from '../../platform/http/lists.js';
import { QUOTE_STATES, type QuoteState } from './quote-revision.entity.js';

export class QuoteListQuery extends ListQuery {
  @IdFilter('Only the quotes for this customer.')
  customerId?: string;

  @ChoiceField({ description: 'Only the quotes whose current revision is in this state.', of: QUOTE_STATES.filter((state) => state !== 'superseded'), optional: true })
  state?: QuoteState;
}

export class QuoteDocumentQuery {
  @QueryInteger()
  @IntegerField({ description: 'The revision whose document is wanted; the current one when missing.', min: 1, max: 1_000_000, optional: true })
  revision?: number;
}
