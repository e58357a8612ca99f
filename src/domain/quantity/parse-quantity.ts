import { fields } from '../errors.js';
import { finiteNumber, objectOf } from '../json-values.js';
import { requireKind, type Quantity } from './quantity.js';
import type { QuantityKind, Unit } from './unit-table.js';

/**
 * A quantity of one kind from untrusted JSON, `{"value": 96, "unit": "ft"}`.
 * @throws DomainError at "", /value, /unit (listing the units of the kind) or an unknown property
 */
export function parseQuantity(value: unknown, kind: QuantityKind): Quantity {
  const object = objectOf(value, ['value', 'unit']);
  return fields({
    value: () => finiteNumber(object.value),
    unit: () => parseUnit(object.unit, kind),
  });
}

/** @throws DomainError (pointer "") listing the units of `kind` */
export function parseUnit(value: unknown, kind: QuantityKind): Unit {
  const unit = value as Unit | null | undefined;
  requireKind(unit, kind);
  return unit;
}
