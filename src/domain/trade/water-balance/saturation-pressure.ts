import { DomainError } from '../../errors.js';

/** ln p over liquid water = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T; p in Pa, T in K. */
const C8 = -5800.2206;
const C9 = 1.3914993;
const C10 = -0.048640239;
const C11 = 4.1764768e-5;
const C12 = -1.4452093e-8;
const C13 = 6.5459673;

/**
 * Saturation pressure of water vapor over liquid water.
 * @param celsius 0 to 200 degC
 * @returns Pa
 * @throws DomainError (pointer "") outside the range
 * @see Hyland and Wexler 1983, ASHRAE Transactions 89(2A), as printed in ASHRAE Handbook Fundamentals
 */
export function saturationPressurePa(celsius: number): number {
  if (!(celsius >= 0 && celsius <= 200)) throw DomainError.at('', 'The temperature must be from 0 to 200 degC.');
  const kelvin = celsius + 273.15;
  return Math.exp(C8 / kelvin + C9 + C10 * kelvin + C11 * kelvin ** 2 + C12 * kelvin ** 3 + C13 * Math.log(kelvin));
}
