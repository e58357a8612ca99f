import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { within } from '../../../../domain/errors.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { loadsOf } from '../../../../domain/trade/sediment/index.js';
import { NestedField, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { LoadCountView, loadsView, VehicleBody, vehicleOf } from './loads.view.js';

@ApiSchema({ name: 'TruckLoadsInput' })
export class TruckLoadsBody {
  @QuantityField({ description: 'The volume as it is loaded: dug and bulked, not in place.', kind: 'volume', minSi: 0, maxSi: 1_000_000 })
  looseVolume: Quantity;

  @QuantityField({ description: 'The weight of it.', kind: 'mass', minSi: 0, maxSi: 2_000_000_000 })
  weight: Quantity;

  @NestedField(() => VehicleBody, { description: 'The truck or trailer.' })
  vehicle: VehicleBody;
}

@ApiSchema({ name: 'TruckLoads' })
export class TruckLoadsView extends ComputedView {
  @ApiProperty({ type: LoadCountView, description: 'The loads.' })
  loads: LoadCountView;
}

export const TRUCK_LOADS = calculation({
  name: 'truck-loads',
  title: 'Loads of a truck or trailer',
  description: 'The larger of volume / box and weight / payload, each rounded up. Wet sediment often weighs out before the box is full. The payload is the owner\'s to know: registered weights, axle loads and the rules of the road come first.',
  input: TruckLoadsBody,
  output: TruckLoadsView,
  run: ({ looseVolume, weight, vehicle }: TruckLoadsBody): TruckLoadsView => {
    const loads = within('/vehicle', () => loadsOf(toSi(looseVolume), toSi(weight), vehicleOf(vehicle)));
    const warnings = loads.limitedBy === 'weight' ? ['The weight fills a load before the volume does: a full box would be overloaded.'] : [];
    return { loads: loadsView(loads), working: loads.working, warnings };
  },
});
