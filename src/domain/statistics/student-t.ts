/** The standard normal deviate below which 95 % lie. */
const Z95 = 1.6448536269514722;
/** From here on the expansion is good to seven digits. */
const MANY = 30;

/**
 * Student's t below which 95 % lie: half the width of a two-sided 90 % interval in standard errors.
 * @param degreesOfFreedom a whole number, at least 1
 * @throws RangeError otherwise
 * @see Abramowitz & Stegun 26.7.3 and 26.7.4 (finite sums), 26.7.5 (expansion for many degrees of freedom)
 */
export function studentT95(degreesOfFreedom: number): number {
  if (!Number.isInteger(degreesOfFreedom) || degreesOfFreedom < 1) throw new RangeError('Degrees of freedom are a whole number from 1.');
  if (degreesOfFreedom >= MANY) return expansion(degreesOfFreedom);
  let [low, high] = [0, 10];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (central(middle, degreesOfFreedom) < 0.9) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The probability that |T| is below t. */
function central(t: number, n: number): number {
  const angle = Math.atan(t / Math.sqrt(n));
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const odd = n % 2 === 1;
  let sum = 0;
  let term = odd ? cosine : 1;
  for (let k = odd ? 1 : 0; k <= n - 2; k += 2) {
    sum += term;
    term *= ((k + 1) / (k + 2)) * cosine * cosine;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

function expansion(n: number): number {
  const z = Z95;
  return z + (z ** 3 + z) / (4 * n) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * n * n) + (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * n ** 3);
}
