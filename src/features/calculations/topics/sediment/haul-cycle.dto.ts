import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../../domain/quantity/index.js';
import { CARRIER_NAMES, HAND_DIGGINGS, type CarrierName, type HandDigging } from '../../../../domain/trade/haul/index.js';
import { ChoiceField, NestedField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'Excavator', description: 'An excavator that digs and fills the carrier.' })
export class ExcavatorBody {
  @QuantityField({ description: 'Volume of the bucket.', kind: 'volume', minSi: 0.005, maxSi: 5 })
  bucketVolume: Quantity;

  @NumberField({ description: 'How full a bucket comes up, as a factor: 0.9 unless told.', min: 0.1, max: 1.3, optional: true, default: 0.9 })
  fill?: number | null;

  @NumberField({ description: 'Seconds from one bucket to the next: 25 unless told.', min: 5, max: 300, optional: true, default: 25 })
  cycleSeconds?: number | null;

  @NumberField({ description: 'Share of an hour that it works, as a factor: 0.75 unless told.', min: 0.1, max: 1, optional: true, default: 0.75 })
  efficiency?: number | null;
}

@ApiSchema({ name: 'HaulCycleInput' })
export class HaulCycleBody {
  @ChoiceField({ description: 'What carries the sediment from the pond to the truck.', of: CARRIER_NAMES })
  carrier: CarrierName;

  @QuantityField({ description: 'The way from the pond to the truck, one way.', kind: 'length', minSi: 0, maxSi: 1000 })
  distance: Quantity;

  @NumberField({ description: 'Slope of the way in percent: above 0 uphill with the load, below 0 downhill; level unless told.', min: -60, max: 60, optional: true, default: 0 })
  slopePercent?: number | null;

  @QuantityField({ description: 'The narrowest place on the way; nothing in the way unless told.', kind: 'length', minSi: 0.01, maxSi: 100, optional: true })
  gateWidth?: Quantity | null;

  @ChoiceField({ description: 'How it digs by hand; left out when an excavator digs or the sediment lies ready. Wet sediment digs like loose ground or like clay. The kinds that begin with trench are for trenches up to 1.5 m deep.', of: HAND_DIGGINGS, optional: true })
  handDigging?: HandDigging | null;

  @NestedField(() => ExcavatorBody, { description: 'The excavator, when one digs.', optional: true })
  excavator?: ExcavatorBody | null;

  @NumberField({ description: 'Density of the sediment in place in kg/m3: 1,331 (83 lb/ft3, 150 percent of water) unless told.', min: 900, max: 2500, optional: true, default: 1331 })
  densityKgPerM3?: number | null;

  @NumberField({ description: 'How much more room it takes when dug, in percent of its volume in place: 25 percent unless told.', min: 0, max: 100, optional: true, default: 25 })
  bulkingPercent?: number | null;

  @NumberField({ description: 'Share of an hour that is worked, as a factor: 0.75 unless told.', min: 0.1, max: 1, optional: true, default: 0.75 })
  efficiency?: number | null;

  @QuantityField({ description: 'What the carrier holds; as usual for its kind unless told.', kind: 'volume', minSi: 0.005, maxSi: 10, optional: true })
  carrierVolume?: Quantity | null;

  @QuantityField({ description: 'What the carrier may carry; as usual for its kind unless told.', kind: 'mass', minSi: 5, maxSi: 10_000, optional: true })
  carrierPayload?: Quantity | null;

  @NumberField({ description: 'Mean speed of the carrier over both ways on the level, in ft a minute; as usual for its kind unless told.', min: 10, max: 2000, optional: true })
  feetPerMinute?: number | null;
}

@ApiSchema({ name: 'HoursBand', description: 'Labor-hours for 1 yd3 in place by hand and barrow: what is usual, and beyond what a figure is doubted.' })
export class HoursBandView {
  @ApiProperty({ type: 'number', description: 'Usual from this many hours.' })
  usualFrom: number;

  @ApiProperty({ type: 'number', description: 'Usual up to this many hours.' })
  usualTo: number;

  @ApiProperty({ type: 'number', description: 'Doubted below this many hours.' })
  doubtBelow: number;

  @ApiProperty({ type: 'number', description: 'Doubted above this many hours.' })
  doubtAbove: number;
}

@ApiSchema({ name: 'LaborRuleRate', description: 'The hours as a labor rule takes them, in place of a flat rate.' })
export class LaborRuleRateView {
  @ApiProperty({ type: 'string', enum: ['sedimentVolume'], description: 'The takeoff quantity.' })
  quantity: string;

  @ApiProperty({ type: 'string', enum: ['yd3'], description: 'The unit of the quantity.' })
  unit: string;

  @ApiProperty({ type: 'string', description: 'Labor-hours for each unit, a decimal with two digits.', example: '2.15' })
  hoursPerUnit: string;
}

@ApiSchema({ name: 'HaulCycle' })
export class HaulCycleView extends ComputedView {
  @ApiProperty({ type: 'number', description: 'Labor-hours for 1 yd3 in place, digging and hauling.' })
  hoursPerYd3: number;

  @ApiProperty({ type: 'number', description: 'Of these, hours of digging.' })
  diggingHoursPerYd3: number;

  @ApiProperty({ type: 'number', description: 'Of these, hours of hauling.' })
  haulingHoursPerYd3: number;

  @ApiProperty({ type: QuantityBody, description: 'The time of one trip, in h.' })
  cycle: Quantity;

  @ApiProperty({ type: 'number', description: 'The number of trips for 1 yd3 in place.' })
  tripsPerYd3: number;

  @ApiProperty({ type: 'array', items: { type: 'string', enum: CARRIER_NAMES }, description: 'The carriers that pass the narrowest place.' })
  fitting: CarrierName[];

  @ApiProperty({ type: HoursBandView, nullable: true, description: 'What the hours are held against; null when a machine digs or carries, or nothing is dug.' })
  band: HoursBandView | null;

  @ApiProperty({ type: LaborRuleRateView, description: 'The hours as a labor rule takes them.' })
  laborRule: LaborRuleRateView;
}
