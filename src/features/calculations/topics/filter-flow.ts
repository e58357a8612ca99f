import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { checkFlowLimits, FLOW_FITS, type FlowFit } from '../../../domain/trade/filtration/index.js';
import { IntegerField, ListField, QuantityBody, QuantityField, TextField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'FlowLimitedInput' })
export class FlowLimitedBody {
  @TextField({ description: 'What it is, such as skimmer or filter.', max: 80, example: 'skimmer' })
  name: string;

  @IntegerField({ description: 'How many of it share the flow alike; 1 unless told.', min: 1, max: 100, optional: true, default: 1 })
  count?: number | null;

  @QuantityField({ description: 'The least flow that it works with, by its maker.', kind: 'flow', minSi: 0, maxSi: 10, optional: true })
  leastFlow?: Quantity | null;

  @QuantityField({ description: 'The most flow that it may take, by its maker.', kind: 'flow', minSi: 0, maxSi: 10, optional: true })
  mostFlow?: Quantity | null;
}

@ApiSchema({ name: 'FilterFlowInput' })
export class FilterFlowBody {
  @QuantityField({ description: 'The flow of the loop at its operating point.', kind: 'flow', minSi: 1e-6, maxSi: 10 })
  flow: Quantity;

  @QuantityField({ description: 'The water in the pond.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  volume: Quantity;

  @ListField(() => FlowLimitedBody, { description: 'The skimmers and filters on the loop.', fewest: 1, most: 20 })
  items: FlowLimitedBody[];
}

@ApiSchema({ name: 'FlowFit' })
export class FlowFitView {
  @ApiProperty({ type: 'string', description: 'What it is.' })
  name: string;

  @ApiProperty({ type: QuantityBody, description: 'The flow through each of it, in gpm.' })
  flow: Quantity;

  @ApiProperty({ type: 'string', enum: [...FLOW_FITS], description: 'Whether the flow lies within its limits; unknown when it has none.' })
  fit: FlowFit;
}

@ApiSchema({ name: 'FilterFlow' })
export class FilterFlowView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The time in which the pump moves the water once, in h.' })
  turnover: Quantity;

  @ApiProperty({ type: [FlowFitView], description: 'Each skimmer and filter, in the order given.' })
  items: FlowFitView[];
}

const siOf = (quantity: Quantity | null | undefined): number | null => (quantity ? toSi(quantity) : null);

export const FILTER_FLOW = calculation({
  name: 'filter-flow',
  title: 'Flow against the limits of skimmers and filters',
  description: 'The flow of a loop against the least and the most flow that each skimmer and filter takes, and the turnover time. Limits are the makers\'; turnover once in 1 to 2 hours is common practice.',
  input: FilterFlowBody,
  output: FilterFlowView,
  run: (input: FilterFlowBody): FilterFlowView => {
    const items = input.items.map(({ name, count, leastFlow, mostFlow }) => ({ name, count: count ?? 1, leastM3PerS: siOf(leastFlow), mostM3PerS: siOf(mostFlow) }));
    const result = checkFlowLimits(toSi(input.flow), toSi(input.volume), items);
    return {
      turnover: { value: result.turnoverHours, unit: 'h' },
      items: result.items.map(({ name, flowM3PerS, fit }) => ({ name, flow: { value: fromSi(flowM3PerS, 'gpm'), unit: 'gpm' }, fit })),
      working: result.working,
      warnings: result.warnings,
    };
  },
});
