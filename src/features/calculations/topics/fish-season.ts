import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { FISH_STATES, fishSeason, SPECIES, stateAt, type FishState, type Species } from '../../../domain/trade/life/index.js';
import { celsiusOf, ChoiceField, ListField, TemperatureBody, TemperatureField, TextField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'WaterPeriodInput' })
export class WaterPeriodBody {
  @TextField({ description: 'The period, such as a month.', max: 40, example: 'July' })
  label: string;

  @TemperatureField({ description: 'Temperature of the water in that period.', minC: -2, maxC: 45 })
  temperature: TemperatureBody;
}

@ApiSchema({ name: 'FishSeasonInput' })
export class FishSeasonBody {
  @ChoiceField({ description: 'The species.', of: SPECIES })
  species: Species;

  @ListField(() => WaterPeriodBody, { description: 'The water through the year, period by period; give its extremes too.', fewest: 1, most: 60 })
  periods: WaterPeriodBody[];
}

@ApiSchema({ name: 'FishPeriod' })
export class FishPeriodView {
  @ApiProperty({ type: 'string', description: 'The period.' })
  label: string;

  @ApiProperty({ type: TemperatureBody, description: 'Its water temperature, as given.' })
  temperature: TemperatureBody;

  @ApiProperty({ type: 'string', enum: [...FISH_STATES], description: 'What the water means for the species: whether to feed, how it grows, whether it suffers or dies.' })
  state: FishState;
}

@ApiSchema({ name: 'FishSeason' })
export class FishSeasonView extends ComputedView {
  @ApiProperty({ type: 'boolean', description: 'Whether the species is one for the table; the others are ornamental.' })
  edible: boolean;

  @ApiProperty({ type: 'boolean', description: 'Whether it lives through all periods, as far as temperature goes.' })
  survives: boolean;

  @ApiProperty({ type: [FishPeriodView], description: 'Each period, in the order given.' })
  periods: FishPeriodView[];

  @ApiProperty({ type: 'string', description: 'Where the species\' temperatures come from.' })
  source: string;
}

export const FISH_SEASON = calculation({
  name: 'fish-season',
  title: 'A fish species through the year',
  description: 'Water temperatures of the year against the ranges of an ornamental or edible species: feeding, growth, stress, death. Each species names its sources, and which of its figures are common practice or from memory.',
  input: FishSeasonBody,
  output: FishSeasonView,
  run: ({ species, periods }: FishSeasonBody): FishSeasonView => {
    const season = fishSeason(species, periods.map(({ label, temperature }) => ({ label, celsius: celsiusOf(temperature) })));
    return {
      edible: season.edible,
      survives: season.survives,
      periods: periods.map(({ label, temperature }) => ({ label, temperature, state: stateAt(species, celsiusOf(temperature)) })),
      source: season.source,
      working: season.working,
      warnings: season.warnings,
    };
  },
});
