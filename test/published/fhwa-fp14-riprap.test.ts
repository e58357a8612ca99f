/**
 * FHWA FP-14, Standard Specifications, Table 705-1: mass of riprap against its intermediate dimension.
 * Evidence V: the table was read. It holds within 2 % for 0.85 of the cube at 165 lb/ft3. Beside it the sphere of the USACE
 * streambank protection manual, Appendix A, eq. A.1: D = (6 W / (π γ))^(1/3) (V).
 */
import { convert } from '../../src/domain/quantity/index.js';
import { boulderWeight } from '../../src/domain/trade/stone/index.js';

const DENSITY = convert(165, 'lb', 'kg') / convert(1, 'ft3', 'm3');

it.each([[8, 42], [11, 110], [17, 400], [27, 1600]])('%d in of quarried rock weigh about %d lb', (inches, pounds) => {
  const side = convert(inches, 'in', 'm');
  const weight = convert(boulderWeight([side, side, side], 'quarried', DENSITY).weightKg, 'kg', 'lb');
  expect(Math.abs(weight / pounds - 1)).toBeLessThan(0.02);
});

it.each([[[24, 18, 12], 259.2], [[36, 24, 18], 777.5]])('an ellipsoid of %p in weighs %d lb (D: derived)', (inches, pounds) => {
  const [a = 0, b = 0, c = 0] = inches.map((value) => convert(value, 'in', 'm'));
  expect(convert(boulderWeight([a, b, c], 'rounded', DENSITY).weightKg, 'kg', 'lb')).toBeCloseTo(pounds, 1);
});

it.each([[8, 25.6], [11, 66.5], [17, 245.6], [27, 984.1]])('a sphere of %d in weighs %d lb (D), and A.1 leads back from the weight to the diameter (V)', (inches, pounds) => {
  const side = convert(inches, 'in', 'm');
  const { weightKg } = boulderWeight([side, side, side], 'rounded', DENSITY);
  expect(convert(weightKg, 'kg', 'lb')).toBeCloseTo(pounds, 1);
  expect(Math.cbrt((6 * weightKg) / (Math.PI * DENSITY))).toBeCloseTo(side, 12);
});
