import fc from 'fast-check';
import { Decimal } from '../../src/domain/decimal.js';
import type { Quantity } from '../../src/domain/quantity/index.js';
import { PartEntity } from '../../src/features/catalog/part.entity.js';
import { shareWithin } from '../../src/features/proposals/parts/depth-share.js';
import { choosePipe } from '../../src/features/proposals/parts/pipes.js';
import { chooseSheets } from '../../src/features/proposals/parts/sheets.js';

const SEAM = { leaks: true, pricePerM: new Decimal(0) };
const metres = (value: number): Quantity => ({ value, unit: 'm' });
const part = (values: Partial<PartEntity>): PartEntity => Object.assign(new PartEntity(), { packSize: new Decimal(1), unitCost: new Decimal(1), ...values });

const profiles = fc.array(fc.record({ step: fc.integer({ min: 1, max: 50 }), depth: fc.integer({ min: 0, max: 300 }) }), { minLength: 2, maxLength: 12 }).map((points) => {
  let x = 0;
  return points.map(({ step, depth }) => ({ distance: metres((x += step) / 10), depth: metres(depth / 100) }));
});

describe('the share of a profile at some depths', () => {
  it('is the same from either edge', () => {
    fc.assert(
      fc.property(profiles, fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 }), (profile, a, b) => {
        const end = profile.at(-1)?.distance.value ?? 0;
        const turned = [...profile].reverse().map(({ distance, depth }) => ({ distance: metres(end - distance.value), depth }));
        const [least, most] = [Math.min(a, b) / 100, Math.max(a, b) / 100];
        expect(shareWithin(turned, least, most)).toBeCloseTo(shareWithin(profile, least, most) as number, 9);
      }),
    );
  });

  it('adds up to the whole over depths that adjoin', () => {
    fc.assert(
      fc.property(profiles, fc.integer({ min: 0, max: 299 }), (profile, cut) => {
        // Between two hundredths, so that no shelf lies on the cut and counts twice.
        const at = cut / 100 + 0.005;
        expect((shareWithin(profile, 0, at) as number) + (shareWithin(profile, at, Infinity) as number)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('what is suggested from the catalog', () => {
  const rolls = fc.uniqueArray(fc.record({ sku: fc.string({ minLength: 1, maxLength: 5 }), widthM: fc.integer({ min: 5, max: 80 }), cents: fc.integer({ min: 10, max: 900 }), whole: fc.boolean() }), { minLength: 1, maxLength: 6, selector: ({ sku }) => sku }).map((list) =>
    list.map(({ sku, widthM, cents, whole }) => part({ sku, name: sku, unit: whole ? 'each' : 'm2', packSize: new Decimal(whole ? 1 : '0.01'), unitCost: new Decimal(whole ? cents : cents / 100), attributes: { kind: 'liner', rollWidth: metres(widthM / 10), rollLength: metres(20) } })),
  );
  const sheet = fc.record({ lengthM: fc.integer({ min: 10, max: 250 }).map((n) => n / 10), widthM: fc.integer({ min: 10, max: 250 }).map((n) => n / 10) });

  it('does not depend on the order of the catalog', () => {
    fc.assert(
      fc.property(rolls, sheet, (parts, size) => {
        const shown = (list: readonly PartEntity[]): string[] => chooseSheets(list, size, 0.0762, SEAM).fitting.map(({ cost }) => cost.toFixed());
        expect(shown([...parts].reverse())).toEqual(shown(parts));
      }),
    );
  });

  it('covers the sheet, never costs less for a longer one, and puts the cheapest first', () => {
    fc.assert(
      fc.property(rolls, sheet, fc.integer({ min: 1, max: 50 }), (parts, size, more) => {
        const { fitting } = chooseSheets(parts, size, 0.0762, SEAM);
        const [first] = fitting;
        const areaOf = (sold: PartEntity): number => (sold.unit === 'each' && sold.attributes?.kind === 'liner' ? (sold.attributes.rollWidth?.value ?? NaN) * 20 : 1);
        const bought = [first, ...(first?.also ?? [])].reduce((sum, line) => sum + (line === undefined ? 0 : line.quantity.toNumber() * areaOf(line.part)), 0);
        expect(bought).toBeGreaterThan(size.lengthM * size.widthM * (1 - 1e-6));
        expect(fitting.every(({ cost }) => cost.gte(first?.cost ?? 0))).toBe(true);
        const longer = chooseSheets(parts, { ...size, lengthM: size.lengthM + more / 10 }, 0.0762, SEAM).fitting[0];
        // To a hundredth of a unit, which each of two lines is rounded up to.
        expect(longer?.cost.plus(1).gte(first?.cost ?? 0)).toBe(true);
      }),
    );
  });

  it('is never fewer pieces for a longer pipe, and always enough', () => {
    const pieces = part({ sku: 'P', unit: 'each', attributes: { kind: 'pipe', innerDiameter: metres(0.05), pieceLength: metres(3) } });
    const count = (lengthM: number): number => choosePipe([pieces], 0.05, lengthM).fitting[0]?.quantity.toNumber() ?? NaN;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 0, max: 500 }), (centimetres, more) => {
        const [some, longer] = [count(centimetres / 100), count((centimetres + more) / 100)];
        expect(longer).toBeGreaterThanOrEqual(some);
        expect(some * 3).toBeGreaterThanOrEqual(centimetres / 100 - 1e-6);
        expect((some - 1) * 3).toBeLessThan(centimetres / 100);
      }),
    );
  });
});
