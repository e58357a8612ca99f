import { Column, type ColumnOptions } from 'typeorm';
import { Decimal } from '../../domain/decimal.js';

/** PostgreSQL `numeric`, exact in and out. */
export function DecimalColumn(name: string, precision: number, scale: number, options: ColumnOptions = {}): PropertyDecorator {
  return Column({
    name,
    type: 'numeric',
    precision,
    scale,
    ...options,
    transformer: {
      to: (value: Decimal | null | undefined) => (Decimal.isDecimal(value) ? new Decimal(value).toFixed() : value),
      from: (value: string | null) => (value === null ? null : new Decimal(value)),
    },
  });
}

/** An amount of money, to four decimals: no currency of ISO 4217 has more minor digits. */
export function AmountColumn(name: string, options: ColumnOptions = {}): PropertyDecorator {
  return DecimalColumn(name, 19, 4, options);
}

/** A calendar day, as YYYY-MM-DD. */
export function DateColumn(name: string, options: ColumnOptions = {}): PropertyDecorator {
  return Column({ name, type: 'date', ...options });
}
