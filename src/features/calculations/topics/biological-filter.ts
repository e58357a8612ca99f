import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { DomainError } from '../../../domain/errors.js';
import { fromSi, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { biologicalFilter } from '../../../domain/trade/filtration/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'BiologicalFilterInput' })
export class BiologicalFilterBody {
  @QuantityField({ description: 'The weight of all fish.', kind: 'mass', minSi: 0.001, maxSi: 1e6 })
  fish: Quantity;

  @NumberField({ description: 'Feed in a day as a share of the weight of the fish, in percent; 1 unless told. Not together with a weight of feed.', min: 0.01, max: 10, optional: true, default: 1 })
  feedPercentPerDay?: number | null;

  @QuantityField({ description: 'Feed in a day by weight, instead of a share of the fish.', kind: 'mass', minSi: 0.0001, maxSi: 1e5, optional: true })
  feedPerDay?: Quantity | null;

  @NumberField({ description: 'Protein in the feed, in percent; 35 unless told.', min: 1, max: 80, optional: true, default: 35 })
  proteinPercent?: number | null;

  @NumberField({ description: 'Ammonia nitrogen that the media turn over, in g for each m2 in a day; 0.3 unless told. Garden ponds lie between 0.1 and 0.5.', min: 0.01, max: 5, optional: true, default: 0.3 })
  nitrificationGPerM2Day?: number | null;

  @NumberField({ description: 'Surface of the media in m2 for each m3 of media; 200 unless told.', min: 10, max: 10_000, optional: true, default: 200 })
  specificSurfaceM2PerM3?: number | null;

  @NumberField({ description: 'Total ammonia nitrogen that the water may carry into the filter, in mg/L; 1 unless told.', min: 0.05, max: 10, optional: true, default: 1 })
  ammoniaLimitMgPerL?: number | null;

  @NumberField({ description: 'What one pass through the filter takes out of it, in percent; 50 unless told.', min: 1, max: 100, optional: true, default: 50 })
  removalPercent?: number | null;

  @QuantityField({ description: 'The media surface of the filter that is there or meant.', kind: 'area', minSi: 0.01, maxSi: 1e6, optional: true })
  mediaArea?: Quantity | null;

  @QuantityField({ description: 'The flow through the filter that is there or meant.', kind: 'flow', minSi: 1e-6, maxSi: 10, optional: true })
  flow?: Quantity | null;
}

@ApiSchema({ name: 'BiologicalFilter' })
export class BiologicalFilterView extends ComputedView {
  @ApiProperty({ type: 'number', description: 'Ammonia nitrogen that the fish give off, in g for a day.' })
  ammoniaGPerDay: number;

  @ApiProperty({ type: QuantityBody, description: 'The media surface that turns it over at the stated rate, in ft2.' })
  mediaArea: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The same at the fast end of garden ponds, 0.5 g for each m2 in a day, in ft2.' })
  leastMediaArea: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The same at the slow end of garden ponds, 0.1 g for each m2 in a day, in ft2.' })
  mostMediaArea: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The media that hold the surface, in ft3.' })
  mediaVolume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The flow that brings the ammonia to the filter, in gpm.' })
  flow: Quantity;

  @ApiProperty({ type: 'number', description: 'Oxygen that the bacteria of the media take from the water if all nitrogen is nitrified, in g for a day: the upper bound.' })
  oxygenGPerDay: number;

  @ApiProperty({ type: 'number', description: 'Sodium bicarbonate that keeps the alkalinity if all nitrogen is nitrified, in g for a day: the upper bound.' })
  bicarbonateGPerDay: number;
}

export const BIOLOGICAL_FILTER = calculation({
  name: 'biological-filter',
  title: 'Biological filter from fish load and feed',
  description: 'Ammonia = feed × protein × 0.092; media area = ammonia / rate; flow = ammonia / (limit × removal in a pass). Source: Timmons & Ebeling, Recirculating Aquaculture, from memory; the rates are a sanity range only.',
  input: BiologicalFilterBody,
  output: BiologicalFilterView,
  run: (input: BiologicalFilterBody): BiologicalFilterView => {
    const result = biologicalFilter({
      feedKgPerDay: feedOf(input),
      proteinPercent: input.proteinPercent ?? 35,
      nitrificationGPerM2Day: input.nitrificationGPerM2Day ?? 0.3,
      specificSurfaceM2PerM3: input.specificSurfaceM2PerM3 ?? 200,
      ammoniaLimitMgPerL: input.ammoniaLimitMgPerL ?? 1,
      removalPercent: input.removalPercent ?? 50,
    });
    const shortMedia = input.mediaArea ? toSi(input.mediaArea) < result.mediaAreaM2 : false;
    const shortFlow = input.flow ? toSi(input.flow) < result.flowM3PerS : false;
    return {
      ammoniaGPerDay: result.ammoniaGPerDay,
      mediaArea: { value: fromSi(result.mediaAreaM2, 'ft2'), unit: 'ft2' },
      leastMediaArea: { value: fromSi(result.leastAreaM2, 'ft2'), unit: 'ft2' },
      mostMediaArea: { value: fromSi(result.mostAreaM2, 'ft2'), unit: 'ft2' },
      mediaVolume: { value: fromSi(result.mediaVolumeM3, 'ft3'), unit: 'ft3' },
      flow: { value: fromSi(result.flowM3PerS, 'gpm'), unit: 'gpm' },
      oxygenGPerDay: result.oxygenGPerDay,
      bicarbonateGPerDay: result.bicarbonateGPerDay,
      working: result.working,
      warnings: [
        ...(shortMedia ? ['The filter has less media surface than this load needs: more media, fewer fish or less feed.'] : []),
        ...(shortFlow ? ['The flow brings less ammonia to the filter than the fish give off at this limit: more flow, or ammonia will stand higher.'] : []),
        ...result.warnings,
      ],
    };
  },
});

function feedOf({ fish, feedPercentPerDay, feedPerDay }: BiologicalFilterBody): number {
  if (!feedPerDay) return (toSi(fish) * (feedPercentPerDay ?? 1)) / 100;
  if (typeof feedPercentPerDay === 'number') throw DomainError.at('/feedPerDay', 'Give the feed by weight or as a share of the fish, not both.');
  return toSi(feedPerDay);
}
