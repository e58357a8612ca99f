import { ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { MAX_CURVE_POINTS } from '../../../../domain/trade/hydraulics/index.js';
import type { CurvePoint } from '../../../../domain/trade/pump-curve/index.js';
import { ListField, NumberField, QuantityField } from '../../../../platform/http/fields/index.js';

@ApiSchema({ name: 'PumpCurvePointInput', description: 'A point of a pump curve.' })
export class PumpCurvePointBody {
  @QuantityField({ description: 'The flow.', kind: 'flow', minSi: 0, maxSi: 10 })
  flow: Quantity;

  @QuantityField({ description: 'The head at that flow.', kind: 'length', minSi: 0, maxSi: 1000 })
  head: Quantity;
}

/** A pump without its power. */
@ApiSchema({ name: 'PumpCurveInput', description: 'A pump by its curve.' })
export class PumpCurveBody {
  @ListField(() => PumpCurvePointBody, { description: 'The curve, flow by flow from the smallest; the head must not rise.', fewest: 2, most: MAX_CURVE_POINTS })
  curve: PumpCurvePointBody[];
}

@ApiSchema({ name: 'PumpInput', description: 'A pump by its curve and what it draws.' })
export class PumpBody extends PumpCurveBody {
  @NumberField({ description: 'What it draws from the wire in watts: the nameplate, not the power of the water.', min: 1, max: 1e6, optional: true })
  powerWatts?: number | null;
}

export function toCurve(points: readonly PumpCurvePointBody[]): CurvePoint[] {
  return points.map(({ flow, head }) => ({ flowM3PerS: toSi(flow), headM: toSi(head) }));
}
