import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../../domain/quantity/index.js';
import { FLOW_REGIMES, LINING_NAMES, type FlowRegime, type Lining } from '../../../../domain/trade/stream/index.js';
import { ChoiceField, NestedField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { ComputedView } from '../../computed.view.js';
import { PumpCurveBody } from '../hydraulics/pump.body.js';
import { PumpingSystemBody } from '../hydraulics/pumping-system.body.js';

@ApiSchema({ name: 'StreamBasinInput', description: 'The pond or basin at the foot of a stream.' })
export class StreamBasinBody {
  @QuantityField({ description: 'Its water surface.', kind: 'area', minSi: 0.01, maxSi: 1e6 })
  surface: Quantity;

  @QuantityField({ description: 'From the water that the pump runs with up to the edge or the overflow.', kind: 'length', minSi: 0, maxSi: 10 })
  freeboard: Quantity;
}

@ApiSchema({ name: 'StreamFlowInput' })
export class StreamFlowBody {
  @QuantityField({ description: 'The width of the bed.', kind: 'length', minSi: 0.01, maxSi: 100 })
  bottomWidth: Quantity;

  @NumberField({ description: 'How many ft the sides lie back for each ft up, or m for each m; 0, upright, unless told.', min: 0, max: 10, optional: true, default: 0 })
  sideSlope?: number | null;

  @QuantityField({ description: 'The length of the stream.', kind: 'length', minSi: 0.1, maxSi: 10_000 })
  length: Quantity;

  @QuantityField({ description: 'How much the bed falls over the length, without the drops of waterfalls in it.', kind: 'length', minSi: 1e-4, maxSi: 1000 })
  fall: Quantity;

  @ChoiceField({ description: 'What the bed is lined with.', of: LINING_NAMES })
  lining: Lining;

  @QuantityField({ description: 'The median stone of a loose bed. In shallow water the roughness follows from it better than from the lining\'s table.', kind: 'length', minSi: 0.001, maxSi: 2, optional: true })
  stoneSize?: Quantity | null;

  @QuantityField({ description: 'The depth that the stream should have. Either this or flow, or neither with a pump.', kind: 'length', minSi: 1e-4, maxSi: 5, optional: true })
  depth?: Quantity | null;

  @QuantityField({ description: 'The flow that it should carry. Either this or depth, or neither with a pump.', kind: 'flow', minSi: 1e-7, maxSi: 100, optional: true })
  flow?: Quantity | null;

  @NestedField(() => PumpingSystemBody, { description: 'The piping from the pump to the head of the stream; with it the pump.', optional: true })
  system?: PumpingSystemBody | null;

  @NestedField(() => PumpCurveBody, { description: 'The chosen pump; with it the piping.', optional: true })
  pump?: PumpCurveBody | null;

  @NestedField(() => StreamBasinBody, { description: 'What the stream runs into, to see whether it takes the water that drains back when the pump stops.', optional: true })
  basin?: StreamBasinBody | null;
}

@ApiSchema({ name: 'StreamState', description: 'A stream that carries a flow evenly.' })
export class StreamStateView {
  @ApiProperty({ type: QuantityBody, description: 'The flow, in gpm.' })
  flow: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The depth with the usual roughness, in in.' })
  depth: Quantity;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The depth with the least roughness of such a lining, in in; null where the stone size gave the roughness.' })
  depthLeast: Quantity | null;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The depth with the most roughness of such a lining, in in; null likewise.' })
  depthMost: Quantity | null;

  @ApiProperty({ type: 'number', description: 'Manning\'s n, with lengths in m; handbooks in feet use the same number.' })
  roughness: number;

  @ApiProperty({ type: 'number', description: 'The mean velocity in ft/s.' })
  velocityFtPerS: number;

  @ApiProperty({ type: 'number', description: 'The Froude number, which has no unit: a factor of the critical velocity.' })
  froude: number;

  @ApiProperty({ type: 'string', enum: [...FLOW_REGIMES], description: 'Subcritical (tranquil) below a Froude number of 0.8, supercritical (rapid) above 1.2, between them unsteady.' })
  regime: FlowRegime;
}

@ApiSchema({ name: 'StreamFlow' })
export class StreamFlowView extends ComputedView {
  @ApiProperty({ type: StreamStateView, nullable: true, description: 'With the depth or the flow that is wanted; its flow is what the depth needs.' })
  wanted: StreamStateView | null;

  @ApiProperty({ type: StreamStateView, nullable: true, description: 'With the flow of the pump at its operating point by Hazen-Williams; null without a pump, or when pump and piping do not meet within its curve.' })
  withPump: StreamStateView | null;

  @ApiProperty({ type: 'boolean', nullable: true, description: 'Whether the pump gives the flow that is wanted; null without either.' })
  pumpGivesIt: boolean | null;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The water that drains back into the basin when the pump stops, by the deeper of both states and with the most roughness, in gal; pipes come on top.' })
  drainsBack: Quantity | null;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'How much the basin rises by it, in in; null without a basin.' })
  basinRise: Quantity | null;

  @ApiProperty({ type: 'boolean', nullable: true, description: 'Whether the freeboard takes it; null without a basin.' })
  basinTakesIt: boolean | null;
}
