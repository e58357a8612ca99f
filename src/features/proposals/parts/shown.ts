import { convert, type Quantity } from '../../../domain/quantity/index.js';

/** For sentences: a length in m as "31.0 ft". */
export function feet(metres: number): string {
  return `${convert(metres, 'm', 'ft').toFixed(1)} ft`;
}

/** For sentences: a length in m as "2.07 in". */
export function inches(metres: number): string {
  return `${trimmed(convert(metres, 'm', 'in').toFixed(3))} in`;
}

/** For sentences: an area in m2 as "713.0 ft2". */
export function squareFeet(m2: number): string {
  return `${convert(m2, 'm2', 'ft2').toFixed(1)} ft2`;
}

/** For sentences: a mass in kg as "12.5 lb". */
export function pounds(kg: number): string {
  return `${convert(kg, 'kg', 'lb').toFixed(1)} lb`;
}

/** For sentences: a volume in m3 as "5264 gal". */
export function gallons(m3: number): string {
  return `${convert(m3, 'm3', 'gal').toFixed(0)} gal`;
}

/** For sentences: a quantity as it was entered. */
export function asEntered({ value, unit }: Quantity): string {
  return `${value} ${unit}`;
}

function trimmed(digits: string): string {
  return digits.replace(/\.?0+$/, '');
}
