import { toSi, type UnitSystem } from '../../domain/quantity/index.js';
import type { Vehicle } from '../../domain/trade/sediment/index.js';

/** A truck, and who says so. */
export interface TakeoffTruck extends Vehicle {
  readonly source: string;
}

/** A small dump truck, common practice; registered weights and axle loads come first. */
const USUAL = { boxM3: toSi({ value: 10, unit: 'yd3' }), payloadKg: toSi({ value: 7, unit: 'ton' }) } as const;

/** @param volume in yd3 or m3, @param payload in ton or t, each the usual truck's unless told */
export function truckOf(volume: number | undefined, payload: number | undefined, units: UnitSystem): TakeoffTruck {
  const us = units === 'us';
  return {
    boxM3: volume === undefined ? USUAL.boxM3 : toSi({ value: volume, unit: us ? 'yd3' : 'm3' }),
    payloadKg: payload === undefined ? USUAL.payloadKg : toSi({ value: payload, unit: us ? 'ton' : 't' }),
    source: volume === undefined || payload === undefined ? 'a truck of 10 yd3 and 7 tons where nothing else was asked for (common practice)' : 'as asked for',
  };
}
