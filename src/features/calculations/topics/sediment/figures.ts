import { fromSi, type Quantity, type Unit } from '../../../../domain/quantity/index.js';

/** A computed SI value as it is read: sediment in yd3, its weight in tons, water in gallons. */
export function figure(si: number, unit: Unit): Quantity {
  return { value: fromSi(si, unit), unit };
}
