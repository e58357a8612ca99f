import { ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { barrierCautions } from '../../../../domain/trade/safety/index.js';
import { BooleanField, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { CautionsView, toCautionsView } from './cautions.view.js';

@ApiSchema({ name: 'BarrierInput' })
export class BarrierBody {
  @QuantityField({ description: 'The greatest depth of water.', kind: 'length', minSi: 0, maxSi: 100 })
  waterDepth: Quantity;

  @BooleanField({ description: 'Whether children may reach the water; yes unless told.', optional: true, default: true })
  childrenMayReachIt?: boolean | null;
}

export const BARRIER_CAUTIONS = calculation({
  name: 'barrier-cautions',
  title: 'Cautions about children and open water',
  description: 'By the greatest depth: 24 in in many places, 18 in in some. Sources: CPSC, ISPSC section 305, ordinances, Arizona Revised Statutes 36-1681. It warns and never permits: ask the building official.',
  input: BarrierBody,
  output: CautionsView,
  run: (input: BarrierBody): CautionsView => toCautionsView(barrierCautions(toSi(input.waterDepth), input.childrenMayReachIt ?? true), 'The greatest depth against the depths from which barriers are commonly required'),
});
