import { ApiSchema } from '@nestjs/swagger';
import { waterSupplyCautions } from '../../../../domain/trade/safety/index.js';
import { BooleanField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { CautionsView, toCautionsView } from './cautions.view.js';

@ApiSchema({ name: 'WaterSupplyInput' })
export class WaterSupplyBody {
  @BooleanField({ description: 'Whether the water comes, by hose or pipe, from the mains or a well that people drink from; yes unless told.', optional: true, default: true })
  drinkingWater?: boolean | null;

  @BooleanField({ description: 'Whether a valve tops the pond up by itself; yes unless told.', optional: true, default: true })
  autoFill?: boolean | null;

  @BooleanField({ description: 'Whether the work touches pipe that also feeds taps; yes unless told.', optional: true, default: true })
  sharedPipe?: boolean | null;
}

export const WATER_SUPPLY_CAUTIONS = calculation({
  name: 'water-supply-cautions',
  title: 'Reminders before a pond is filled from water that people drink',
  description: 'Backflow, lead and chlorine: Safe Drinking Water Act section 1417 for lead, cross connection rules as one state has them, and common practice. It warns and never permits: ask the water supplier and a licensed plumber.',
  input: WaterSupplyBody,
  output: CautionsView,
  run: ({ drinkingWater, autoFill, sharedPipe }: WaterSupplyBody): CautionsView =>
    toCautionsView(waterSupplyCautions({ drinkingWater: drinkingWater ?? true, autoFill: autoFill ?? true, sharedPipe: sharedPipe ?? true }), 'Where the water comes from and what it passes, each against its rule'),
});
