import { requirePositive, requireWithin } from '../input-checks.js';

/**
 * Share of the feed's protein that becomes ammonia nitrogen: 0.16 nitrogen in protein × 0.80 assimilated × 0.80 excreted
 * × 0.90 as ammonia.
 * @see Timmons & Ebeling, Recirculating Aquaculture: the factor is from memory
 */
export const NITROGEN_PER_PROTEIN = 0.092;

/** What nitrifying 1 g of nitrogen takes, in g (an aquaculture engineering page, read; bicarbonate follows from the alkalinity). */
export const PER_GRAM_NITRIFIED = { alkalinityAsCaCO3: 7.14, oxygen: 4.18, sodiumBicarbonate: (7.1456 * 84.0066) / 50.0435 } as const;

/**
 * Ammonia nitrogen that fish give off, in g a day.
 * @param feedKgPerDay above 0
 * @param proteinPercent of the feed, 1 to 80
 * @throws DomainError at /feedPerDay or /proteinPercent
 */
export function ammoniaFromFeed(feedKgPerDay: number, proteinPercent: number): number {
  requirePositive('/feedPerDay', feedKgPerDay);
  requireWithin('/proteinPercent', proteinPercent, 1, 80, 'percent');
  return (feedKgPerDay * 1000 * proteinPercent * NITROGEN_PER_PROTEIN) / 100;
}
