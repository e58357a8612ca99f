import { Decimal } from '../../domain/decimal.js';
import type { DraftSection } from './draft-sections.js';
import type { ProposedDraftView } from './draft.views.js';
import type { ProposedLineView, ProposedScopeView } from './proposals.dto.js';
import type { Scope } from './scopes.js';

/** What a quote takes of a part in one line, in the part's unit. */
const MOST = 1_000_000;
/** The decimals that a quote takes. */
const SCALE = 4;

/** The suggestions in the form of a new quote: what no quote could take is left out, and a section without items too. */
export function draftOf(surveyId: string, items: readonly ProposedScopeView[], sections: readonly DraftSection[]): ProposedDraftView {
  const labor = items.flatMap(({ scope, labor }) =>
    labor.filter(({ hours }) => hours !== null).map(({ costCode, ruleId, description, quantity }) => ({ costCode, ruleId, description, ...(quantity === null ? {} : { quantity }), section: scope })),
  );
  const parts = items.flatMap(({ scope, parts }) =>
    parts.flatMap(({ suggested }) => (suggested === null ? [] : [suggested, ...suggested.also])).filter(canBeQuoted).map((part) => ({ partId: part.partId, quantity: quoted(part).toFixed(), costCode: part.costCode, section: scope })),
  );
  const used = new Set<Scope>([...labor, ...parts].map(({ section }) => section));
  return { surveyId, sections: sections.filter(({ key }) => used.has(key)).map((section) => ({ ...section })), labor, parts, other: [] };
}

/** Whether a quote takes so much of it: not nothing, and not more than fits a line. */
export function canBeQuoted(part: ProposedLineView): boolean {
  const quantity = quoted(part);
  return quantity.gt(0) && quantity.lte(MOST);
}

function quoted({ quantity }: ProposedLineView): Decimal {
  return new Decimal(quantity).toDecimalPlaces(SCALE, Decimal.ROUND_UP);
}
