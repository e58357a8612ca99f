import type { Quantity } from '../../../domain/quantity/index.js';
import type { PartBody } from '../../catalog/index.js';

type Attributes = NonNullable<PartBody['attributes']>;

const ft = (value: number): Quantity => ({ value, unit: 'ft' });
const gph = (value: number): Quantity => ({ value, unit: 'gph' });

/** A curve that falls from the shut-off head with the square of the flow; the figures are invented. */
const pump = (shutOffFt: number, endGph: number, powerWatts: number): Attributes => ({
  kind: 'pump',
  powerWatts,
  curve: [0, 0.25, 0.5, 0.75, 1].map((share) => ({ flow: gph(endGph * share), head: ft(Math.round(shutOffFt * (1 - share * share) * 100) / 100) })),
});
const skimmer = (least: number, most: number): Attributes => ({ kind: 'skimmer', flowMinimum: gph(least), flowMaximum: gph(most) });
const filter = (least: number, most: number, surfaceFt2: number): Attributes => ({ kind: 'filter', flowMinimum: gph(least), flowMaximum: gph(most), surfaceArea: { value: surfaceFt2, unit: 'ft2' } });
const pipe = (inches: number): Attributes => ({ kind: 'pipe', innerDiameter: { value: inches, unit: 'in' } });

/** Technical data of the parts that a design chooses from, by sku. Invented, as their prices are. */
export const ATTRIBUTES: Readonly<Record<string, Attributes>> = {
  'PMP-1500': pump(12, 2400, 110),
  'PMP-3000': pump(18, 4400, 230),
  'PMP-4500': pump(21, 6200, 340),
  'PMP-6000': pump(25, 8000, 480),
  'SKM-16': skimmer(1000, 3500),
  'SKM-24': skimmer(2500, 7000),
  'BIO-40': filter(800, 3500, 400),
  'BIO-80': filter(2000, 7000, 850),
  'DSR-01': { kind: 'doser', reservoirVolume: { value: 0.5, unit: 'gal' }, dosePerDay: { value: 0.014, unit: 'gal' } },
  'PIP-FLEX-2': pipe(2.049),
  'PIP-RIGID-2': pipe(2.067),
  'UND-08': { kind: 'underlayment', rollWidth: ft(15), rollLength: ft(300) },
  'LIN-45': { kind: 'liner', rollWidth: ft(30), rollLength: ft(100) },
  'LIN-60': { kind: 'liner', rollWidth: ft(40), rollLength: ft(100) },
  'STN-BLD-12': { kind: 'stone', densityKgPerM3: 2640 },
  'STN-BLD-24': { kind: 'stone', densityKgPerM3: 2640 },
  'GRV-RND-1': { kind: 'gravel', bulkDensityKgPerM3: 1600, voidFraction: 0.4 },
};
