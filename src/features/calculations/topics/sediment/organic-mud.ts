import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { plain } from '../../../../domain/decimal.js';
import type { Quantity } from '../../../../domain/quantity/index.js';
import { organicMudDensity, WATER_KG_PER_M3 } from '../../../../domain/trade/sediment/index.js';
import { NumberField, QuantityBody } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { figure } from './figures.js';

@ApiSchema({ name: 'OrganicMudInput' })
export class OrganicMudBody {
  @NumberField({ description: 'Water in percent of the wet weight.', min: 0, max: 99.9 })
  waterPercentOfWet: number;

  @NumberField({ description: 'Loss on ignition in percent of the wet weight.', min: 0, max: 100 })
  ignitionPercentOfWet: number;
}

@ApiSchema({ name: 'OrganicMud' })
export class OrganicMudView extends ComputedView {
  @ApiProperty({ type: 'number', description: 'Density in place, in kg/m3: what haul-cycle takes.' })
  densityKgPerM3: number;

  @ApiProperty({ type: QuantityBody, description: 'The weight of 1 ft3 in place, in lb.' })
  weightPerFt3: Quantity;
}

export const ORGANIC_MUD = calculation({
  name: 'organic-mud',
  title: 'Density of organic mud from a laboratory\'s figures',
  description: 'Density = water × 100 × 2.6 / (100 + (W + IG) × 1.6). Source: Håkanson & Jansson, Principles of Lake Sedimentology, 1983, 4.1.3 (from memory). Both percentages are of the wet weight, unlike the water content of sediment-weight.',
  input: OrganicMudBody,
  output: OrganicMudView,
  run: ({ waterPercentOfWet, ignitionPercentOfWet }: OrganicMudBody): OrganicMudView => {
    const densityKgPerM3 = organicMudDensity(waterPercentOfWet, ignitionPercentOfWet);
    return {
      densityKgPerM3,
      weightPerFt3: figure(densityKgPerM3 * 0.028316846592, 'lb'),
      working: {
        rule: 'density = water × 100 × 2.6 / (100 + (W + IG) × 1.6)',
        inputs: [
          { name: 'water W', value: plain(waterPercentOfWet), unit: '% of wet weight' },
          { name: 'loss on ignition IG', value: plain(ignitionPercentOfWet), unit: '% of wet weight' },
        ],
        steps: [{ label: 'density', expression: `${plain(WATER_KG_PER_M3)} × 260 / (100 + (${plain(waterPercentOfWet)} + ${plain(ignitionPercentOfWet)}) × 1.6)`, value: plain(densityKgPerM3), unit: 'kg/m3' }],
      },
      warnings: [],
    };
  },
});
