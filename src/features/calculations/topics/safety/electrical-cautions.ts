import { ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { electricalCautions } from '../../../../domain/trade/safety/index.js';
import { BooleanField, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { CautionsView, toCautionsView } from './cautions.view.js';

@ApiSchema({ name: 'ElectricalInput' })
export class ElectricalBody {
  @QuantityField({ description: 'From the edge of the water to the receptacle; counts as near unless told.', kind: 'length', minSi: 0, maxSi: 1000, optional: true })
  receptacleDistance?: Quantity | null;

  @QuantityField({ description: 'The longest cord of the equipment; no cord unless told.', kind: 'length', minSi: 0, maxSi: 1000, optional: true })
  cordLength?: Quantity | null;

  @BooleanField({ description: 'Whether a pump or light is under water; yes unless told.', optional: true, default: true })
  submersible?: boolean | null;

  @BooleanField({ description: 'Whether metal is near the water, such as rails, housings or reinforcement; yes unless told.', optional: true, default: true })
  metalNearWater?: boolean | null;
}

export const ELECTRICAL_CAUTIONS = calculation({
  name: 'electrical-cautions',
  title: 'Receptacle and bonding reminders',
  description: 'What to ask a licensed electrician about electricity near water: NEC Article 680 Part V and 682 in general terms, edition-dependent; distances from NEC 680.22 and California\'s title 8, section 2569.5, both for pools. It warns and never permits.',
  input: ElectricalBody,
  output: CautionsView,
  run: (input: ElectricalBody): CautionsView =>
    toCautionsView(
      electricalCautions({
        receptacleDistanceM: input.receptacleDistance ? toSi(input.receptacleDistance) : null,
        cordLengthM: input.cordLength ? toSi(input.cordLength) : null,
        submersiblePump: input.submersible ?? true,
        metalNearWater: input.metalNearWater ?? true,
      }),
      'Distances, cords and equipment against what electrical codes commonly ask',
    ),
});
