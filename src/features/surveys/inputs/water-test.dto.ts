import { ApiSchema } from '@nestjs/swagger';
import { InstantField, NumberField, TemperatureField, type TemperatureBody } from '../../../platform/http/fields/index.js';

function mgPerL(what: string, max: number): PropertyDecorator {
  return NumberField({ description: `${what}, in mg/L.`, min: 0, max, optional: true });
}

/** One test of the water; every figure is optional, since kits differ. */
@ApiSchema({ name: 'WaterTest' })
export class WaterTestBody {
  @InstantField({ description: 'When the water was taken: pH and oxygen move with the daylight.' })
  takenAt: string;

  @TemperatureField({ description: 'The temperature of the water.', minC: -2, maxC: 45, optional: true })
  temperature?: TemperatureBody | null;

  @NumberField({ description: 'The pH, which has no unit; 7 is neutral in pure water.', min: 0, max: 14, optional: true, example: 7.8 })
  ph?: number | null;

  @mgPerL('Total ammonia as nitrogen; a kit that states it as NH3 shows 1.216 times as much', 1000)
  totalAmmoniaMgPerL?: number | null;

  @mgPerL('Nitrite as nitrogen', 1000)
  nitriteMgPerL?: number | null;

  @mgPerL('Nitrate as nitrogen', 10_000)
  nitrateMgPerL?: number | null;

  @mgPerL('Alkalinity as calcium carbonate', 10_000)
  alkalinityMgPerL?: number | null;

  @mgPerL('Dissolved oxygen', 50)
  oxygenMgPerL?: number | null;

  @mgPerL('Total chlorine, chloramine included', 1000)
  chlorineMgPerL?: number | null;
}
