import { ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../../domain/quantity/index.js';
import { MAX_DEPTH_M, MAX_LENGTH_M } from '../../../domain/trade/index.js';
import { QuantityField } from '../../../platform/http/fields/index.js';

@ApiSchema({ name: 'DepthProfilePoint' })
export class DepthPointBody {
  @QuantityField({ description: 'How far from the edge where the profile begins, along a straight line to the other edge.', kind: 'length', minSi: 0, maxSi: MAX_LENGTH_M })
  distance: Quantity;

  @QuantityField({ description: 'How deep the shell is there, below the full-water line.', kind: 'length', minSi: 0, maxSi: MAX_DEPTH_M })
  depth: Quantity;
}
