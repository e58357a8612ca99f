import { displayUnit, type DisplayUse, type QuantityKind, type Unit, type UnitSystem } from '../quantity/index.js';

interface TakeoffQuantityRow {
  readonly kind: QuantityKind;
  readonly si: Unit;
  readonly use: DisplayUse;
}

const TABLE = {
  surfaceArea: { kind: 'area', si: 'm2', use: 'area' },
  perimeter: { kind: 'length', si: 'm', use: 'length' },
  sedimentMeanThickness: { kind: 'length', si: 'm', use: 'depth' },
  sedimentVolume: { kind: 'volume', si: 'm3', use: 'earth' },
  meanDepth: { kind: 'length', si: 'm', use: 'depth' },
  maxDepth: { kind: 'length', si: 'm', use: 'depth' },
  waterVolume: { kind: 'volume', si: 'm3', use: 'water' },
  waterVolumeNow: { kind: 'volume', si: 'm3', use: 'water' },
} as const satisfies Record<string, TakeoffQuantityRow>;

/** The quantities a takeoff gives, by the names that labor rules use. */
export type TakeoffQuantityName = keyof typeof TABLE;

export const TAKEOFF_QUANTITIES: readonly TakeoffQuantityName[] = Object.keys(TABLE) as TakeoffQuantityName[];

export function isTakeoffQuantity(name: unknown): name is TakeoffQuantityName {
  return typeof name === 'string' && Object.hasOwn(TABLE, name);
}

/** Which units a rule for this quantity may be stated in. */
export function takeoffKind(name: TakeoffQuantityName): QuantityKind {
  return TABLE[name].kind;
}

/** The SI unit its computed value is in. */
export function takeoffSiUnit(name: TakeoffQuantityName): Unit {
  return TABLE[name].si;
}

/** The unit a company reads it in: sediment in yd3 or m3, water in gal or L, depths in in or cm. */
export function takeoffDisplayUnit(name: TakeoffQuantityName, system: UnitSystem): Unit {
  return displayUnit(TABLE[name].use, system);
}
