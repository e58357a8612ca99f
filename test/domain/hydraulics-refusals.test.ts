import { circulationLoop, pumpCurve, shortCircuit, systemCurve, waterViscosity } from '../../src/domain/trade/hydraulics/index.js';
import { weirFlow, type WeirInput } from '../../src/domain/trade/weir/index.js';
import { feet, gpm, LOOP, pipe } from './hydraulics-support.js';
import { refusals } from './support.js';

const points = (...pairs: [number, number][]) => pairs.map(([flow, head]) => ({ flowM3PerS: gpm(flow), headM: feet(head) }));

it('refuses a pump curve that rises, at the point where it rises', () => {
  expect(refusals(() => pumpCurve(points([0, 20], [20, 22], [40, 10])))).toEqual(['/1/head']);
  expect(refusals(() => circulationLoop({ system: LOOP, pump: { curve: points([0, 20], [20, 18], [40, 19]), powerW: null }, waterVolumeM3: null }))).toEqual(['/pump/curve/2/head']);
});

it('refuses flows out of order, one point alone and a head below 0', () => {
  expect(refusals(() => pumpCurve(points([0, 20], [20, 18], [20, 17])))).toEqual(['/2/flow']);
  expect(refusals(() => pumpCurve(points([0, 20])))).toEqual(['']);
  expect(refusals(() => pumpCurve(points([0, 20], [20, -1])))).toEqual(['/1/head']);
});

it('refuses a pipe of no diameter, no runs at all, and a negative lift', () => {
  expect(refusals(() => systemCurve({ ...LOOP, runs: [pipe(), pipe({ innerDiameterM: 0 })] }))).toEqual(['/runs/1/innerDiameter']);
  expect(refusals(() => systemCurve({ ...LOOP, runs: [] }))).toEqual(['/runs']);
  expect(refusals(() => systemCurve({ ...LOOP, staticLiftM: -1 }))).toEqual(['/staticLift']);
});

it('refuses a negative count of fittings, and pipe rougher than the friction formula is proven for', () => {
  expect(refusals(() => systemCurve({ ...LOOP, runs: [pipe({ fittings: [{ kind: 'elbow-90', count: -1 }] })] }))).toEqual(['/runs/0/fittings/0/count']);
  expect(refusals(() => systemCurve({ ...LOOP, runs: [pipe({ innerDiameterM: 0.05, roughnessM: 0.003 })] }))).toEqual(['/runs/0/roughness']);
});

it('refuses a vessel whose loss is given at no flow, and water that it has no viscosity for', () => {
  expect(refusals(() => systemCurve({ ...LOOP, vessels: [{ name: 'filter', flowM3PerS: 0, headM: 1 }] }))).toEqual(['/vessels/0/flow']);
  expect(refusals(() => waterViscosity(31))).toEqual(['/waterTemperature']);
  expect(refusals(() => waterViscosity(-1))).toEqual(['/waterTemperature']);
});

it('refuses to judge short-circuiting without a shape, or over more than the pond is long', () => {
  const [area, perimeter] = [{ value: 100, unit: 'm2' }, { value: 50, unit: 'm' }] as const;
  expect(refusals(() => shortCircuit({ shape: 'measured', area, perimeter }, 3))).toEqual(['/outline/shape']);
  const box = { shape: 'rectangle', length: { value: 4, unit: 'm' }, width: { value: 3, unit: 'm' } } as const;
  expect(refusals(() => shortCircuit(box, 5.1))).toEqual(['/distance']);
});

it('refuses a weir without head, drowned to the top, without the crest it needs, or too narrow for its head', () => {
  const weir: WeirInput = { kind: 'contracted', headM: 0.1, crestM: 0.5, channelM: null, crestHeightM: null, downstreamHeadM: 0 };
  expect(refusals(() => weirFlow({ ...weir, headM: 0 }))).toEqual(['/head']);
  expect(refusals(() => weirFlow({ ...weir, downstreamHeadM: 0.1 }))).toEqual(['/downstreamHead']);
  expect(refusals(() => weirFlow({ ...weir, crestM: null }))).toEqual(['/crest']);
  expect(refusals(() => weirFlow({ ...weir, crestM: 0.02 }))).toEqual(['/head']);
  expect(refusals(() => weirFlow({ ...weir, kind: 'kindsvater-carter' }))).toEqual(['/channel']);
  expect(refusals(() => weirFlow({ ...weir, kind: 'kindsvater-carter', channelM: 0.4, crestHeightM: 0.2 }))).toEqual(['/crest']);
});
