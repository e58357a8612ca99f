/** Sentences round to a few digits, and there may be thousands of parts: no exact conversion is needed. */
const [FOOT_M, INCH_M, POUND_KG, GALLON_M3] = [0.3048, 0.0254, 0.45359237, 0.003785411784];

/** For sentences: a length in m as "31.0 ft". */
export function feet(metres: number): string {
  return `${(metres / FOOT_M).toFixed(1)} ft`;
}

/** For sentences: a length in m as "2.067 in". */
export function inches(metres: number): string {
  return `${trimmed((metres / INCH_M).toFixed(3))} in`;
}

/** For sentences: an area in m2 as "713.0 ft2". */
export function squareFeet(m2: number): string {
  return `${(m2 / FOOT_M ** 2).toFixed(1)} ft2`;
}

/** For sentences: a mass in kg as "12.5 lb". */
export function pounds(kg: number): string {
  return `${(kg / POUND_KG).toFixed(1)} lb`;
}

/** For sentences: a volume in m3 as "5264 gal". */
export function gallons(m3: number): string {
  return `${(m3 / GALLON_M3).toFixed(0)} gal`;
}

/** For sentences: "1 strip", "2 strips". */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

function trimmed(digits: string): string {
  return digits.replace(/\.?0+$/, '');
}
