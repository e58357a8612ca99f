import { ApiProperty } from '@nestjs/swagger';
import { convert, type Quantity } from '../../../../domain/quantity/index.js';
import { QuantityBody } from '../../../../platform/http/fields/index.js';
import { ComputedView } from '../../computed.view.js';

/** What stone on the site leaves to be bought. */
export abstract class PurchaseView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'Of the reclaimed stone, what the work takes, in ton (short tons of 2,000 lb).' })
  reused: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'What is left to buy, in ton (short tons of 2,000 lb).' })
  toBuy: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'Reclaimed stone that stays over, in ton (short tons of 2,000 lb).' })
  leftOver: Quantity;
}

export function tons(kg: number): Quantity {
  return { value: convert(kg, 'kg', 'ton'), unit: 'ton' };
}

export function purchaseFigures(purchase: { reusedKg: number; toBuyKg: number; leftOverKg: number }): Pick<PurchaseView, 'reused' | 'toBuy' | 'leftOver'> {
  return { reused: tons(purchase.reusedKg), toBuy: tons(purchase.toBuyKg), leftOver: tons(purchase.leftOverKg) };
}
