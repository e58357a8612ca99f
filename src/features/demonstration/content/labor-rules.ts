import type { LaborRuleBody } from '../../labor-rules/index.js';

export interface DemoRule extends Omit<LaborRuleBody, 'effectiveFrom'> {
  /** Working days before the day the demonstration is made on. */
  readonly inForceForDays: number;
}

type Hours = readonly [setup: string, each: string, fewest: string];

const LONG_AGO = 700;
const LAST_SEASON = 200;

const rule = (costCode: string, name: string, quantity: DemoRule['quantity'], unit: DemoRule['unit'], [setupHours, hoursPerUnit, minimumHours]: Hours, inForceForDays = LONG_AGO): DemoRule => ({
  costCode, name, quantity, unit, setupHours, hoursPerUnit, minimumHours, inForceForDays,
});

/** Hours are invented. The clean-out rule was corrected once: surveys from before still go by the old one. */
export const LABOR_RULES: readonly DemoRule[] = [
  rule('drain', 'Lower the water, and move fish and frogs to holding tanks', 'waterVolume', 'gal', ['1.5', '0.0004', '2']),
  rule('cleanout', 'Clean out sediment and rinse down', 'sedimentVolume', 'yd3', ['3', '2.1', '6']),
  rule('cleanout', 'Clean out sediment and rinse down', 'sedimentVolume', 'yd3', ['3', '1.75', '6'], LAST_SEASON),
  rule('hauling', 'Load and haul sediment away', 'sedimentVolume', 'yd3', ['1', '0.35', '1.5']),
  rule('liner', 'Lay underlayment and liner', 'surfaceArea', 'ft2', ['4', '0.02', '6']),
  rule('edge', 'Rebuild the edge', 'perimeter', 'ft', ['2', '0.45', '4']),
  rule('plumbing', 'Run a circulation loop', 'count', 'each', ['2', '3', '4']),
  rule('filtration', 'Set skimmers and filters', 'count', 'each', ['1', '4', '4']),
  rule('waterfall', 'Rebuild a waterfall', 'count', 'each', ['6', '14', '12']),
  rule('planting', 'Plant', 'count', 'each', ['0.5', '0.12', '1']),
  rule('reclaim', 'Clean and set again what is on the site', 'count', 'each', ['1', '0.25', '1']),
  rule('fish', 'Bring in fish and watch them settle', 'count', 'each', ['1', '0.05', '1.5']),
  rule('lighting', 'Set low-voltage lights', 'count', 'each', ['1', '0.75', '2']),
  rule('start-up', 'Refill, start up and balance the water', 'count', 'each', ['0', '3', '3']),
];
