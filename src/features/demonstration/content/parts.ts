import type { DemoPart } from './part.js';
import { CIRCULATION } from './parts-circulation.js';
import { GROUND } from './parts-ground.js';
import { LIFE } from './parts-life.js';

/** What three parts cost before the supplier's last list. */
const FORMER_COSTS: Readonly<Record<string, string>> = { 'PMP-3000': '389.00', 'LIN-45': '0.79', 'STN-BLD-12': '172.00' };

export const PARTS: readonly DemoPart[] = [...CIRCULATION, ...GROUND, ...LIFE].map((part) => {
  const formerCost = FORMER_COSTS[part.sku];
  return formerCost === undefined ? part : { ...part, formerCost };
});
