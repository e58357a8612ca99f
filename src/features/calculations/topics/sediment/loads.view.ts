import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import type { Loads, Vehicle } from '../../../../domain/trade/sediment/index.js';
import { QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { figure } from './figures.js';

@ApiSchema({ name: 'Vehicle', description: 'A truck or a trailer.' })
export class VehicleBody {
  @QuantityField({ description: 'What its box holds, level with the sides.', kind: 'volume', minSi: 0.01, maxSi: 100 })
  boxVolume: Quantity;

  @QuantityField({ description: 'What it may legally carry.', kind: 'mass', minSi: 10, maxSi: 60_000 })
  payload: Quantity;
}

export function vehicleOf({ boxVolume, payload }: VehicleBody): Vehicle {
  return { boxM3: toSi(boxVolume), payloadKg: toSi(payload) };
}

@ApiSchema({ name: 'LoadCount', description: 'Loads, and what limits them.' })
export class LoadCountView {
  @ApiProperty({ type: 'integer', description: 'The number of loads.' })
  loads: number;

  @ApiProperty({ type: 'integer', description: 'The number of loads if only the volume counted.' })
  byVolume: number;

  @ApiProperty({ type: 'integer', description: 'The number of loads if only the weight counted.' })
  byWeight: number;

  @ApiProperty({ type: 'string', enum: ['volume', 'weight', 'both'], description: 'Which of the two needs more loads.' })
  limitedBy: string;

  @ApiProperty({ type: QuantityBody, description: 'What a full load takes before the first limit, in yd3.' })
  perLoadVolume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'What a full load weighs then, in short tons.' })
  perLoadWeight: Quantity;
}

export function loadsView({ loads, byVolume, byWeight, limitedBy, perLoadM3, perLoadKg }: Loads): LoadCountView {
  return { loads, byVolume, byWeight, limitedBy, perLoadVolume: figure(perLoadM3, 'yd3'), perLoadWeight: figure(perLoadKg, 'ton') };
}
