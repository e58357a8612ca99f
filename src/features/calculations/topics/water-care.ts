import type { Calculation } from '../calculation.js';
import { ALKALINITY_DOSE } from './alkalinity-dose.js';
import { BIOLOGICAL_FILTER } from './biological-filter.js';
import { CONCENTRATION_DOSE } from './concentration-dose.js';
import { DECHLORINATION_DOSE } from './dechlorination-dose.js';
import { DOSER_SETTING } from './doser-setting.js';
import { FILTER_FLOW } from './filter-flow.js';
import { FISH_LOAD } from './fish-load.js';
import { FISH_SEASON } from './fish-season.js';
import { MOSQUITO_BREEDING } from './mosquito-breeding.js';
import { OXYGEN_SATURATION } from './oxygen-saturation.js';
import { SALT_DOSE } from './salt-dose.js';
import { UNIONIZED_AMMONIA } from './un-ionized-ammonia.js';
import { VOLUME_FROM_SALT } from './volume-from-salt.js';

/** Filters, doses and what lives in the water. */
export const WATER_CARE: readonly Calculation[] = [
  BIOLOGICAL_FILTER,
  FILTER_FLOW,
  DOSER_SETTING,
  CONCENTRATION_DOSE,
  DECHLORINATION_DOSE,
  SALT_DOSE,
  VOLUME_FROM_SALT,
  ALKALINITY_DOSE,
  OXYGEN_SATURATION,
  UNIONIZED_AMMONIA,
  FISH_LOAD,
  FISH_SEASON,
  MOSQUITO_BREEDING,
];
