export { isUnit, UNITS, type QuantityKind, type Unit } from './unit-table.js';
export { kindOf, requireKind, unitsOf, type Quantity } from './quantity.js';
export { parseQuantity, parseUnit } from './parse-quantity.js';
export { convert, fromSi, toSi } from './convert.js';
export { displayUnit, type DisplayUse, type UnitSystem } from './unit-system.js';
