import { SEDIMENT_EXAMPLES } from './sediment-examples.js';
import { SITE_WORK_EXAMPLES } from './site-work-examples.js';
import { MOVING_WATER_EXAMPLES } from './moving-water-examples.js';
import { WATER_CARE_EXAMPLES } from './water-care-examples.js';

/** A good input for every calculation, by its name; the tests of all calculations walk over them. */
export const CALCULATION_EXAMPLES: Readonly<Record<string, object>> = {
  ...SEDIMENT_EXAMPLES,
  'boulder-weight': { length: { value: 24, unit: 'in' }, width: { value: 18, unit: 'in' }, height: { value: 12, unit: 'in' }, form: 'rounded' },
  ...SITE_WORK_EXAMPLES,
  ...WATER_CARE_EXAMPLES,
  ...MOVING_WATER_EXAMPLES,
};
