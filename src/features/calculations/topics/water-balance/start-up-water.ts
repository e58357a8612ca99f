import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { startUpWater } from '../../../../domain/trade/water-balance/index.js';
import { QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'StartUpWaterInput' })
export class StartUpWaterBody {
  @QuantityField({ description: 'The volume of the full pond, rock and gravel not taken off.', kind: 'volume', minSi: 0.001, maxSi: 10_000_000 })
  pond: Quantity;

  @QuantityField({ description: 'What rock and gravel displace; nothing unless told.', kind: 'volume', minSi: 0, maxSi: 10_000_000, optional: true })
  displaced?: Quantity | null;

  @QuantityField({ description: 'What pipes, filters, skimmers, basins and streams hold while they run; nothing unless told.', kind: 'volume', minSi: 0, maxSi: 1_000_000, optional: true })
  system?: Quantity | null;

  @QuantityField({ description: 'Old water that was kept and goes back, for instance with the fish; nothing unless told.', kind: 'volume', minSi: 0, maxSi: 10_000_000, optional: true })
  kept?: Quantity | null;

  @QuantityField({ description: 'Water for washing out, which is pumped off again; nothing unless told.', kind: 'volume', minSi: 0, maxSi: 1_000_000, optional: true })
  rinsing?: Quantity | null;

  @QuantityField({ description: 'Flow of the supply, by bucket and watch; no time is given unless told.', kind: 'flow', minSi: 1e-6, maxSi: 10, optional: true })
  supplyFlow?: Quantity | null;
}

@ApiSchema({ name: 'StartUpWater' })
export class StartUpWaterView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'What the whole system holds when it runs, in gal.' })
  runningVolume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'What must come from the supply, in gal.' })
  supplyVolume: Quantity;

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'How long the supply takes, in h; null without its flow.' })
  fillTime: Quantity | null;
}

export const START_UP_WATER = calculation({
  name: 'start-up-water',
  title: 'Water for refill and start-up',
  description: 'Pond − rock + pipes and filters − kept water + rinsing water, and the time that the supply takes. Definition. See the calculation of water cost for its price.',
  input: StartUpWaterBody,
  output: StartUpWaterView,
  run: (input: StartUpWaterBody): StartUpWaterView => {
    const optional = (quantity?: Quantity | null): number => (quantity ? toSi(quantity) : 0);
    const { runningM3, supplyM3, fillHours, working, warnings } = startUpWater({
      pondM3: toSi(input.pond),
      displacedM3: optional(input.displaced),
      systemM3: optional(input.system),
      keptM3: optional(input.kept),
      rinsingM3: optional(input.rinsing),
      supplyM3PerS: input.supplyFlow ? toSi(input.supplyFlow) : null,
    });
    return {
      runningVolume: { value: fromSi(runningM3, 'gal'), unit: 'gal' },
      supplyVolume: { value: fromSi(supplyM3, 'gal'), unit: 'gal' },
      fillTime: fillHours === null ? null : { value: fillHours, unit: 'h' },
      working,
      warnings,
    };
  },
});
