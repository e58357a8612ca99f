import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../../domain/quantity/index.js';
import { ROLL_PRICE_BASES, type RollPriceBasis } from '../../../../domain/trade/liner/index.js';
import { ChoiceField, ListField, MoneyBody, MoneyField, NestedField, QuantityBody, QuantityField, TextField } from '../../../../platform/http/fields/index.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'LinerRoll', description: 'A roll of liner or underlayment.' })
export class LinerRollBody {
  @TextField({ description: 'What it is called.', max: 200 })
  name: string;

  @QuantityField({ description: 'The width of the roll.', kind: 'length', minSi: 0.5, maxSi: 50 })
  width: Quantity;

  @QuantityField({ description: 'The length on the roll.', kind: 'length', minSi: 0.5, maxSi: 1000 })
  length: Quantity;

  @MoneyField({ description: 'Its price. Give every roll one, or none.', sign: 'not-negative', optional: true })
  price?: MoneyBody | null;

  @ChoiceField({ description: 'What the price is for: the roll, which is then bought whole, or a length or area that is cut off; ft2 unless told.', of: ROLL_PRICE_BASES, optional: true, default: 'ft2' })
  pricePer?: RollPriceBasis | null;
}

@ApiSchema({ name: 'SeamPrice', description: 'What a seam costs in tape, primer and work.' })
export class SeamPriceBody {
  @MoneyField({ description: 'The price.', sign: 'not-negative' })
  price: MoneyBody;

  @ChoiceField({ description: 'The length that it is for.', of: ['ft', 'm'] })
  per: 'ft' | 'm';
}

@ApiSchema({ name: 'LinerCutInput' })
export class LinerCutBody {
  @QuantityField({ description: 'The length of the sheet.', kind: 'length', minSi: 0.1, maxSi: 100 })
  length: Quantity;

  @QuantityField({ description: 'The width of the sheet.', kind: 'length', minSi: 0.1, maxSi: 100 })
  width: Quantity;

  @ListField(() => LinerRollBody, { description: 'The rolls that can be had.', fewest: 1, most: 20 })
  rolls: LinerRollBody[];

  @QuantityField({ description: 'How far two strips overlap in a seam; 3 in unless told (common practice; the maker of the tape says).', kind: 'length', minSi: 0, maxSi: 0.45, optional: true })
  seamOverlap?: Quantity | null;

  @NestedField(() => SeamPriceBody, { description: 'What seams cost, in the currency of the rolls; nothing unless told.', optional: true })
  seamPrice?: SeamPriceBody | null;
}

@ApiSchema({ name: 'LinerStrips', description: 'Strips of one kind of roll in a sheet.' })
export class LinerStripsView {
  @ApiProperty({ type: 'string', description: 'The roll.' })
  roll: string;

  @ApiProperty({ type: 'integer', description: 'The number of strips.' })
  count: number;

  @ApiProperty({ type: 'integer', description: 'The number of pieces that each strip is joined from.' })
  pieces: number;

  @ApiProperty({ type: 'integer', description: 'The number of rolls that they are cut from.' })
  rolls: number;

  @ApiProperty({ type: QuantityBody, description: 'The length that is bought, in ft.' })
  bought: Quantity;
}

@ApiSchema({ name: 'LinerCutPlan', description: 'One way to make the sheet.' })
export class LinerCutPlanView {
  @ApiProperty({ type: 'string', enum: ['along-length', 'along-width'], description: 'Which way the strips run.' })
  direction: 'along-length' | 'along-width';

  @ApiProperty({ type: [LinerStripsView], description: 'The strips by roll.' })
  strips: LinerStripsView[];

  @ApiProperty({ type: QuantityBody, description: 'The length of a strip, in ft, without overlaps of seams across it.' })
  stripLength: Quantity;

  @ApiProperty({ type: 'integer', description: 'The number of seams.' })
  seams: number;

  @ApiProperty({ type: QuantityBody, description: 'The length of all seams, in ft.' })
  seamLength: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The area that is bought, in ft2: sheet, overlaps and waste.' })
  boughtArea: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The area within seams, in ft2.' })
  overlapArea: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The area that is left over, in ft2.' })
  waste: Quantity;

  @ApiProperty({ type: 'number', description: 'The waste in percent of what is bought.' })
  wastePercent: number;

  @ApiProperty({ type: MoneyBody, nullable: true, description: 'Goods and seams; null without prices.' })
  cost: MoneyBody | null;
}

@ApiSchema({ name: 'LinerCut' })
export class LinerCutView extends ComputedView {
  @ApiProperty({ type: [LinerCutPlanView], description: 'The cheapest way first, and up to four others; without prices the least area first.' })
  plans: LinerCutPlanView[];
}
