import { ApiProperty } from '@nestjs/swagger';
import { convert, type Quantity } from '../../../domain/quantity/index.js';
import type { Dose } from '../../../domain/trade/chemistry/index.js';
import { QuantityBody } from '../../../platform/http/fields/index.js';
import { ComputedView } from '../computed.view.js';

/** A dose by weight, in the unit of a bag and in that of a kitchen scale. */
export abstract class DoseView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The product to weigh, in lb.' })
  dose: Quantity;

  @ApiProperty({ type: 'number', description: 'The same, in g.' })
  doseGrams: number;
}

export function doseView({ doseGrams, working, warnings }: Dose): DoseView {
  return { dose: { value: convert(doseGrams / 1000, 'kg', 'lb'), unit: 'lb' }, doseGrams, working, warnings };
}
