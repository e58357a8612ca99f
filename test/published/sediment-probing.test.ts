// Sediment probing as state and extension guidance describes it: thickness is the depth to the firm bottom less the
// depth to the top of the soft sediment, both from the same water line (V in general form; no numeric standard found).
// The figures are plane geometry: D.
import { convert } from '../../src/domain/quantity/index.js';
import { takeoff, takeoffValue } from '../../src/domain/trade/index.js';
import { sedimentByPlace } from '../../src/domain/trade/sediment/index.js';

const top = [1.2, 1.6, 2.0, 1.8, 1.1];
const firm = [1.5, 2.3, 3.1, 2.6, 1.3];

const survey = takeoff({
  outline: { shape: 'rectangle', length: { value: 30, unit: 'ft' }, width: { value: 10, unit: 'ft' } },
  probes: { unit: 'ft', readings: top.map((toSediment, i) => ({ toSediment, toBottom: firm[i] ?? 0 })) },
});

test('D: five probes average 0.62 ft of sediment', () => {
  expect(takeoffValue(survey, 'sedimentMeanThickness', 'ft')?.value).toBeCloseTo(0.62, 12);
});

test('D: over 300 square feet that is 186 cubic feet, or 6.889 cubic yards', () => {
  expect(takeoffValue(survey, 'sedimentVolume', 'ft3')?.value).toBeCloseTo(186, 9);
  expect(takeoffValue(survey, 'sedimentVolume', 'yd3')?.value).toBeCloseTo(6.889, 3);
});

test('D: a triangle of 30 square feet with 0.4, 0.9 and 0.2 ft of sediment at its corners holds 15 cubic feet', () => {
  const corners = [[0, 0, 0.4], [10, 0, 0.9], [0, 6, 0.2]] as const;
  const readings = corners.map(([x, y, thickness]) => ({ at: [x, y] as const, toSediment: 1, toBottom: 1 + thickness }));
  const { triangulated } = sedimentByPlace({ shape: 'polygon', unit: 'ft', points: corners.map(([x, y]) => [x, y] as const) }, { unit: 'ft', readings }, { kind: 'shore-readings' });
  expect(convert(triangulated.sedimentM3, 'm3', 'ft3')).toBeCloseTo(15, 9);
});

test('D: water as found and sediment make up the water after clean-out', () => {
  const { waterVolumeM3, waterVolumeNowM3, sedimentVolumeM3 } = survey;
  expect((waterVolumeNowM3 ?? 0) + (sedimentVolumeM3 ?? 0)).toBeCloseTo(waterVolumeM3 ?? NaN, 12);
});
