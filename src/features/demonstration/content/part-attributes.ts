import type { Quantity } from '../../../domain/quantity/index.js';
import type { FittingKind } from '../../../domain/trade/hydraulics/index.js';
import type { PartBody } from '../../catalog/index.js';

type Attributes = NonNullable<PartBody['attributes']>;

const ft = (value: number): Quantity => ({ value, unit: 'ft' });
const ft2 = (value: number): Quantity => ({ value, unit: 'ft2' });
const gal = (value: number): Quantity => ({ value, unit: 'gal' });
const gph = (value: number): Quantity => ({ value, unit: 'gph' });

/** A curve that falls from the shut-off head with the square of the flow; the figures are invented. */
const pump = (shutOffFt: number, endGph: number, powerWatts: number): Attributes => ({
  kind: 'pump',
  powerWatts,
  curve: [0, 0.25, 0.5, 0.75, 1].map((share) => ({ flow: gph(endGph * share), head: ft(Math.round(shutOffFt * (1 - share * share) * 100) / 100) })),
});
/** A loss of head that is known at the greatest flow. */
const loss = (headFt: number, atGph: number): { headLoss: Quantity; headLossFlow: Quantity } => ({ headLoss: ft(headFt), headLossFlow: gph(atGph) });
const skimmer = (least: number, most: number, lossFt: number): Attributes => ({ kind: 'skimmer', flowMinimum: gph(least), flowMaximum: gph(most), ...loss(lossFt, most) });
const filter = (least: number, most: number, surfaceFt2: number, lossFt: number): Attributes => ({ kind: 'filter', flowMinimum: gph(least), flowMaximum: gph(most), ...loss(lossFt, most), surfaceArea: ft2(surfaceFt2) });
const spillway = (lipIn: number, least: number, most: number): Attributes => ({ kind: 'spillway', lipWidth: { value: lipIn, unit: 'in' }, flowMinimum: gph(least), flowMaximum: gph(most) });
const fitting = (fittingKind: FittingKind): Attributes => ({ kind: 'fitting', fittingKind, innerDiameter: { value: 2.067, unit: 'in' } });
const doser = (reservoirGal: number, forGal: number): Attributes => ({ kind: 'doser', reservoirVolume: gal(reservoirGal), dosePerDay: gal(0.014), doseFor: gal(forGal), settingStep: gal(250) });
const plant = (coverFt2: number, leastIn: number, mostIn: number): Attributes => ({ kind: 'plant', coverArea: ft2(coverFt2), depthMinimum: { value: leastIn, unit: 'in' }, depthMaximum: { value: mostIn, unit: 'in' } });
const pipe = (inches: number): Attributes => ({ kind: 'pipe', innerDiameter: { value: inches, unit: 'in' } });

/** Technical data of the parts that a design chooses from, by sku. Invented, as their prices are. */
export const ATTRIBUTES: Readonly<Record<string, Attributes>> = {
  'PMP-1500': pump(12, 1960, 110),
  'PMP-3000': pump(18, 4020, 230),
  'PMP-4500': pump(21, 5950, 340),
  'PMP-6000': pump(25, 8020, 480),
  'SKM-16': skimmer(1000, 3500, 0.6),
  'SKM-24': skimmer(2500, 7000, 0.7),
  'BIO-40': filter(800, 3500, 400, 1.1),
  'BIO-80': filter(2000, 7000, 850, 1.3),
  'WFL-16': spillway(16, 800, 3200),
  'WFL-24': spillway(24, 1200, 4800),
  'DSR-01': doser(0.5, 4000),
  'DSR-02': doser(1.5, 4000),
  'PIP-FLEX-2': pipe(2.049),
  'PIP-RIGID-2': pipe(2.067),
  'ELB-2': fitting('elbow-90'),
  'TEE-2': fitting('tee-branch'),
  'VLV-BALL-2': fitting('ball-valve'),
  'VLV-CHK-2': fitting('swing-check'),
  'UND-08': { kind: 'underlayment', rollWidth: ft(15), rollLength: ft(300) },
  'LIN-45': { kind: 'liner', rollWidth: ft(30), rollLength: ft(100) },
  'LIN-60': { kind: 'liner', rollWidth: ft(40), rollLength: ft(100) },
  'STN-BLD-12': { kind: 'stone', densityKgPerM3: 2640 },
  'STN-BLD-24': { kind: 'stone', densityKgPerM3: 2640 },
  'GRV-RND-1': { kind: 'gravel', bulkDensityKgPerM3: 1600, voidFraction: 0.4 },
  'PLT-LILY': plant(12, 12, 36),
  'PLT-IRIS': plant(2.5, 0, 6),
  'PLT-RUSH': plant(2, 0, 8),
  'PLT-PICK': plant(3, 2, 12),
  'PLT-SEDGE': plant(1, 0, 2),
  'PLT-MARI': plant(1.5, 0, 4),
  'PLT-HORN': plant(6, 12, 60),
  'FSH-GOLD': { kind: 'fish', species: 'goldfish', grownMass: { value: 0.6, unit: 'lb' } },
  'FSH-KOI': { kind: 'fish', species: 'koi', grownMass: { value: 7, unit: 'lb' } },
};
