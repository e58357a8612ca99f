import type { QuoteRevisionEntity } from './quote-revision.entity.js';
import type { QuoteSums } from './quote-sums.js';

/** What was accepted comes to; null while nothing is accepted. A constraint keeps all four together. */
export function acceptedSums({ acceptedNetTotal, acceptedTaxTotal, acceptedGrossTotal, acceptedTaxes }: QuoteRevisionEntity): QuoteSums | null {
  if (acceptedNetTotal === null || acceptedTaxTotal === null || acceptedGrossTotal === null || acceptedTaxes === null) return null;
  return { netTotal: acceptedNetTotal, taxTotal: acceptedTaxTotal, grossTotal: acceptedGrossTotal, taxes: acceptedTaxes };
}
