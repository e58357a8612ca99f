import fc from 'fast-check';
import { oxygenSaturation, standardPressureMmHg, unionizedAmmonia } from '../../src/domain/trade/chemistry/index.js';
import { refusals } from './support.js';

const celsius = fc.double({ min: 0, max: 39, noNaN: true });

test('warmer water and thinner air hold less oxygen', () => {
  fc.assert(
    fc.property(celsius, fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0, max: 4000, noNaN: true }), (t, more, altitude) => {
      const pressure = standardPressureMmHg(altitude);
      expect(oxygenSaturation(t + more, pressure).saturationMgPerL).toBeLessThan(oxygenSaturation(t, pressure).saturationMgPerL);
      expect(oxygenSaturation(t, standardPressureMmHg(altitude + 10)).saturationMgPerL).toBeLessThan(oxygenSaturation(t, pressure).saturationMgPerL);
    }),
  );
});

test('sea level is the pressure of the standard atmosphere', () => {
  expect(standardPressureMmHg(0)).toBe(760);
});

test('a higher pH and warmer water make more of the ammonia un-ionized, never more than there is', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), fc.double({ min: 4, max: 10.9, noNaN: true }), celsius, (total, pH, t) => {
      const here = unionizedAmmonia(total, 'nitrogen', pH, t);
      expect(here.unionizedMgPerL).toBeLessThanOrEqual(total);
      expect(unionizedAmmonia(total, 'nitrogen', pH + 0.1, t).share).toBeGreaterThan(here.share);
      expect(unionizedAmmonia(total, 'nitrogen', pH, t + 1).share).toBeGreaterThan(here.share);
    }),
  );
});

test('refuse what the formulas are not for, with the place', () => {
  expect(refusals(() => oxygenSaturation(40.1, 760))).toEqual(['/temperature']);
  expect(refusals(() => oxygenSaturation(-0.1, 760))).toEqual(['/temperature']);
  expect(refusals(() => oxygenSaturation(20, 300))).toEqual(['/pressureMmHg']);
  expect(refusals(() => standardPressureMmHg(6000))).toEqual(['/altitude']);
  expect(refusals(() => unionizedAmmonia(1, 'nitrogen', 12, 20))).toEqual(['/pH']);
  expect(refusals(() => unionizedAmmonia(1, 'nitrogen', 8, 41))).toEqual(['/temperature']);
  expect(refusals(() => unionizedAmmonia(Number.NaN, 'nitrogen', 8, 20))).toEqual(['/totalMgPerL']);
});
