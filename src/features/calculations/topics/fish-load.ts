import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { fishLoad, LOAD_MEASURES, type LoadLimit, type LoadMeasure } from '../../../domain/trade/life/index.js';
import { BooleanField, NumberField, QuantityBody, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'FishLoadInput' })
export class FishLoadBody {
  @QuantityField({ description: 'The weight of all fish.', kind: 'mass', minSi: 0.001, maxSi: 1e6 })
  fish: Quantity;

  @QuantityField({ description: 'The water in the pond.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  volume: Quantity;

  @QuantityField({ description: 'The surface of the pond.', kind: 'area', minSi: 0.01, maxSi: 1e6 })
  surface: Quantity;

  @NumberField({ description: 'Feed in a day as a share of the weight of the fish, in percent; 1 unless told.', min: 0.01, max: 10, optional: true, default: 1 })
  feedPercentPerDay?: number | null;

  @NumberField({ description: 'Protein in the feed, in percent; 35 unless told.', min: 1, max: 80, optional: true, default: 35 })
  proteinPercent?: number | null;

  @BooleanField({ description: 'Whether an aerator or a waterfall runs day and night; not, unless told.', optional: true, default: false })
  aerated?: boolean | null;

  @QuantityField({ description: 'The media surface of the biological filter.', kind: 'area', minSi: 0.01, maxSi: 1e6, optional: true })
  mediaArea?: Quantity | null;

  @NumberField({ description: 'Ammonia nitrogen that the media turn over, in g for each m2 in a day; 0.3 unless told.', min: 0.01, max: 5, optional: true, default: 0.3 })
  nitrificationGPerM2Day?: number | null;
}

@ApiSchema({ name: 'FishLoadLimit' })
export class FishLoadLimitView {
  @ApiProperty({ type: 'string', enum: [...LOAD_MEASURES], description: 'What limits the fish.' })
  measure: LoadMeasure;

  @ApiProperty({ type: QuantityBody, description: 'The most fish that it carries, in lb.' })
  mostFish: Quantity;

  @ApiProperty({ type: 'number', description: 'The fish that are there as a percentage of it, in percent.' })
  usedPercent: number;

  @ApiProperty({ type: 'string', description: 'Where the limit comes from.' })
  basis: string;
}

@ApiSchema({ name: 'FishLoad' })
export class FishLoadView extends ComputedView {
  @ApiProperty({ type: [FishLoadLimitView], description: 'Each limit.' })
  limits: FishLoadLimitView[];

  @ApiProperty({ type: FishLoadLimitView, description: 'The limit that is reached first.' })
  tightest: FishLoadLimitView;
}

const viewOf = ({ measure, mostFishKg, usedPercent, basis }: LoadLimit): FishLoadLimitView => ({ measure, mostFish: { value: fromSi(mostFishKg, 'lb'), unit: 'lb' }, usedPercent, basis });

export const FISH_LOAD = calculation({
  name: 'fish-load',
  title: 'Fish load against volume, surface, feed and filter',
  description: 'By weight, as the mass of a fish grows with the cube of its length. Sources: SRAC 451 (1998) for volume and surface; 30 lb of feed on an acre in a day without aeration, a feeding-rate study of channel catfish; the filter by its media.',
  input: FishLoadBody,
  output: FishLoadView,
  run: (input: FishLoadBody): FishLoadView => {
    const { limits, tightest, working, warnings } = fishLoad({
      fishKg: toSi(input.fish),
      volumeM3: toSi(input.volume),
      surfaceM2: toSi(input.surface),
      feedPercentPerDay: input.feedPercentPerDay ?? 1,
      proteinPercent: input.proteinPercent ?? 35,
      aerated: input.aerated ?? false,
      mediaAreaM2: input.mediaArea ? toSi(input.mediaArea) : null,
      nitrificationGPerM2Day: input.nitrificationGPerM2Day ?? 0.3,
    });
    return { limits: limits.map(viewOf), tightest: viewOf(tightest), working, warnings };
  },
});
