import { requireWithin } from '../input-checks.js';

/**
 * Culex tarsalis takes 14 days from egg to adult at 70 °F and 10 at 80 °F.
 * @see North Dakota Department of Health, both read
 */
const COOL = { fahrenheit: 70, days: 14 };
const WARM = { fahrenheit: 80, days: 10 };

/** The thermal sum through both points: 350 °F days above 45 °F. */
const THRESHOLD_F = (COOL.fahrenheit * COOL.days - WARM.fahrenheit * WARM.days) / (COOL.days - WARM.days);
const DEGREE_DAYS_F = COOL.days * (COOL.fahrenheit - THRESHOLD_F);

/** Where Culex pipiens (females) stops developing, °C. @see Loetti, Schweigmann & Burroni 2011, abstract read */
export const DEVELOPMENT_BOUNDS_C = { least: 9.8, most: 34.2 } as const;

/**
 * Days from egg to adult of a common pond mosquito. Between the published points a straight line, beyond them the
 * thermal sum through both.
 * @param celsius of the water, −5 to 60 °C
 * @returns null where development stops, below 9.8 °C
 * @throws DomainError at /temperature
 */
export function mosquitoDevelopmentDays(celsius: number): number | null {
  requireWithin('/temperature', celsius, -5, 60, 'degC');
  if (celsius < DEVELOPMENT_BOUNDS_C.least) return null;
  const fahrenheit = celsius * 1.8 + 32;
  if (fahrenheit >= COOL.fahrenheit && fahrenheit <= WARM.fahrenheit) {
    return COOL.days + ((fahrenheit - COOL.fahrenheit) / (WARM.fahrenheit - COOL.fahrenheit)) * (WARM.days - COOL.days);
  }
  return DEGREE_DAYS_F / (fahrenheit - THRESHOLD_F);
}

/** Whether the temperature is beyond the published points, so that the days are an extrapolation. */
export function isExtrapolated(celsius: number): boolean {
  const fahrenheit = celsius * 1.8 + 32;
  return fahrenheit < COOL.fahrenheit || fahrenheit > WARM.fahrenheit;
}
