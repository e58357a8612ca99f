import { convert } from '../../src/domain/quantity/index.js';
import type { PipeRun, PumpingSystem } from '../../src/domain/trade/hydraulics/index.js';
import type { CurvePoint } from '../../src/domain/trade/pump-curve/index.js';

export const gpm = (value: number): number => convert(value, 'gpm', 'm3/h') / 3600;
export const inGpm = (flow: number): number => convert(flow * 3600, 'm3/h', 'gpm');
export const feet = (value: number): number => convert(value, 'ft', 'm');
export const inFeet = (value: number): number => convert(value, 'm', 'ft');
export const inches = (value: number): number => convert(value, 'in', 'm');

/** Plastic pipe without fittings. */
export function pipe(change: Partial<PipeRun> = {}): PipeRun {
  return { side: 'discharge', innerDiameterM: inches(2.067), lengthM: feet(60), hazenWilliamsC: 150, roughnessM: feet(5e-6), fittings: [], otherK: 0, ...change };
}

/** 60 ft of 2 in, K 6.11, 8 ft of lift, water at 60 °F. */
export const LOOP: PumpingSystem = { runs: [pipe({ otherK: 6.11 })], staticLiftM: feet(8), vessels: [], waterTemperatureC: (60 - 32) / 1.8 };

/** Points of head = shutoff − factor · Q² (ft, gpm), evenly from 0 to `most` gpm. */
export function quadraticCurve(shutoffFt: number, factor: number, mostGpm: number, points: number): CurvePoint[] {
  return Array.from({ length: points }, (_, i) => {
    const flow = (mostGpm * i) / (points - 1);
    return { flowM3PerS: gpm(flow), headM: feet(Math.max(0, shutoffFt - factor * flow * flow)) };
  });
}
