/**
 * Swamee & Jain 1976, by the value that the open-source `fluids` prints in its documentation (V), and the Colebrook
 * equation (D: derived by iteration to full precision).
 */
import { frictionFactor, swameeJain } from '../../src/domain/trade/hydraulics/index.js';

it('gives 0.0184524244 at Re 1e5 and ε/D 1e-4', () => {
  expect(Math.abs(swameeJain(1e5, 1e-4) - 0.0184524244)).toBeLessThan(1e-6);
});

it.each([[1e5, 1e-4, 0.018514], [1e5, 0, 0.01799], [1e6, 1e-3, 0.019943], [1e5, 1e-3, 0.022175]])('Colebrook at Re %d and ε/D %d gives %d', (reynolds, roughness, factor) => {
  expect(Math.abs(frictionFactor(reynolds, roughness) - factor)).toBeLessThan(1e-6);
});

it('is 64/Re in laminar flow, and joins the formulas on either side of the transition (D)', () => {
  expect(frictionFactor(1000, 0)).toBe(0.064);
  expect(frictionFactor(2000.001, 1e-4)).toBeCloseTo(frictionFactor(2000, 1e-4), 6);
  expect(frictionFactor(3999.999, 1e-4)).toBeCloseTo(frictionFactor(4000, 1e-4), 6);
});
