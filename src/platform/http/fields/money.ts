import { applyDecorators } from '@nestjs/common';
import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { Type } from 'class-transformer';
import { IsOptional, ValidateBy } from 'class-validator';
import { Decimal } from '../../../domain/decimal.js';
import { formatSum, parseMoney } from '../../../domain/money/index.js';
import { DomainError } from '../../../domain/errors.js';
import { type FieldOptions } from './field.js';

/** Money on the wire. */
@ApiSchema({ name: 'Money', description: 'An amount with its ISO 4217 currency. The amount is a decimal string with exactly the currency\'s minor digits when it comes from the service.' })
export class MoneyBody {
  @ApiProperty({ type: 'string', pattern: '^-?\\d{1,18}(\\.\\d{1,4})?$', description: 'The amount as a decimal string, in the currency named beside it.', example: '1234.50' })
  amount: string;

  @ApiProperty({ type: 'string', pattern: '^[A-Z]{3}$', description: 'The currency, by its ISO 4217 letters.', example: 'USD' })
  currency: string;
}

interface MoneyOptions extends FieldOptions {
  /** 'positive' is above zero, 'not-negative' may be zero; any sign unless told. */
  readonly sign?: 'positive' | 'not-negative';
}

function check(value: unknown, sign: MoneyOptions['sign']): string | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return 'must be money such as {"amount": "1234.50", "currency": "USD"}';
  const { amount, currency, ...rest } = value as Record<string, unknown>;
  const extra = Object.keys(rest)[0];
  if (extra !== undefined) return `/${extra}: is not a known field of money; remove it`;
  if (typeof amount !== 'string') return '/amount: must be a decimal number written as a string, such as "1234.50"';
  if (typeof currency !== 'string') return '/currency: must be a currency by its ISO 4217 letters, such as USD';
  try {
    const parsed = parseMoney({ amount, currency });
    if (sign === 'positive' && parsed.lte(0)) return '/amount: must be more than 0';
    if (sign === 'not-negative' && parsed.lt(0)) return '/amount: must not be negative';
    return null;
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const first = error.violations[0];
    return `${first?.pointer ?? ''}: ${first?.detail ?? error.message}`;
  }
}

/** Money in a request. Whether it is the company's currency is the use case's question. */
export function MoneyField(options: MoneyOptions): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: MoneyBody, description: options.description, required: options.optional !== true, ...(options.optional === true ? { nullable: true } : {}) }),
    ValidateBy({ name: 'money', validator: { validate: (value: unknown) => check(value, options.sign) === null, defaultMessage: (args) => check(args?.value, options.sign) ?? '' } }),
    Type(() => Object),
    ...(options.optional === true ? [IsOptional()] : []),
  );
}

/** An amount or a sum of amounts, as the service answers with it. */
export function toMoneyBody(amount: Decimal, currency: string): MoneyBody {
  return formatSum(amount, currency);
}
