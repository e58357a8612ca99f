/**
 * Water power and energy: university course note "5.3 Pumps and power requirements" and an extension table (V), the
 * Crane TP-410 example 7.15 (V), and a derived pond pump (D). The printed figures are rounded to their last digit.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { waterPower, yearlyEnergy } from '../../src/domain/trade/hydraulics/index.js';

const WATTS_PER_HP = 745.7;
const horsepower = (gpm: number, feet: number): number => waterPower(convert(gpm, 'gpm', 'm3/h') / 3600, convert(feet, 'ft', 'm')) / WATTS_PER_HP;

it.each([[20, 20, 0.101, 5e-4], [50, 20, 0.253, 5e-4], [100, 50, 1.26, 5e-3], [800, 250, 50.5, 0.06]])('%d gpm against %d ft are %d hp in the water', (gpm, feet, expected, tolerance) => {
  expect(Math.abs(horsepower(gpm, feet) - expected)).toBeLessThan(tolerance);
});

it('100 gpm against 421 ft at an efficiency of 0.70 take 15.2 hp', () => {
  expect(horsepower(100, 421) / 0.7).toBeCloseTo(15.2, 1);
});

it('800 gpm against 250 ft at an efficiency of 0.75 take 67.3 hp at the shaft (V; the efficiency is inferred from both figures)', () => {
  expect(Math.abs(horsepower(800, 250) / 0.75 - 67.3)).toBeLessThan(0.1);
});

it('10 gpm against 10 ft with 0.9 × 0.9 cost $0.0023 an hour at $0.10, printed as 0.002 (V)', () => {
  const kilowatts = (horsepower(10, 10) * WATTS_PER_HP) / (0.9 * 0.9) / 1000;
  expect(kilowatts * 0.1).toBeCloseTo(0.0023, 4);
  expect((kilowatts * 0.1).toFixed(3)).toBe('0.002');
});

it('a pond pump of 50 gpm and 12 ft at 0.35 wire to water uses 2,827.8 kWh in a year (D, by 3960 for 8.33 lb/gal)', () => {
  const watts = (horsepower(50, 12) * WATTS_PER_HP) / 0.35;
  expect(Math.abs(yearlyEnergy(watts, 24, 365) / 2827.8 - 1)).toBeLessThan(0.001);
  expect(Math.abs((yearlyEnergy(watts, 24, 365) * 0.16) / 452.46 - 1)).toBeLessThan(0.001);
});
