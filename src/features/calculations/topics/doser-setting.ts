import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { doserSetting } from '../../../domain/trade/filtration/index.js';
import { NumberField, QuantityBody, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'DoserSettingInput' })
export class DoserSettingBody {
  @QuantityField({ description: 'The volume of the basin at full water, as if it were empty of rock.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  basinVolume: Quantity;

  @QuantityField({ description: 'What rock, gravel and planters displace; nothing unless told.', kind: 'volume', minSi: 0, maxSi: 1e6, optional: true })
  displacedVolume?: Quantity | null;

  @QuantityField({ description: 'What pipes, filters and a stream hold besides; nothing unless told.', kind: 'volume', minSi: 0, maxSi: 1e6, optional: true })
  besidesVolume?: Quantity | null;

  @QuantityField({ description: 'The step in which the doser\'s volume is set; any volume unless told.', kind: 'volume', minSi: 1e-6, maxSi: 1e6, optional: true })
  settingStep?: Quantity | null;

  @QuantityField({ description: 'The label\'s dose.', kind: 'volume', minSi: 1e-9, maxSi: 1000 })
  dose: Quantity;

  @QuantityField({ description: 'The water that the label\'s dose is for.', kind: 'volume', minSi: 0.001, maxSi: 1e6 })
  doseFor: Quantity;

  @NumberField({ description: 'How many days lie between two of the label\'s doses; 1 unless told, 7 for a weekly dose.', min: 0.05, max: 60, optional: true, default: 1 })
  everyDays?: number | null;

  @QuantityField({ description: 'What the reservoir holds when it is filled.', kind: 'volume', minSi: 1e-6, maxSi: 1000 })
  reservoir: Quantity;
}

@ApiSchema({ name: 'DoserSetting' })
export class DoserSettingView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The water that is really there, in gal.' })
  netWater: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The volume to set the doser to, in gal: the net water, rounded down to a step.' })
  setVolume: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'What it gives in a day at that setting, in L.' })
  dosePerDay: Quantity;

  @ApiProperty({ type: 'number', description: 'How long the reservoir lasts, in weeks (the number of weeks); four to six is usual.' })
  reservoirWeeks: number;
}

export const DOSER_SETTING = calculation({
  name: 'doser-setting',
  title: 'Setting of an automatic doser, and its reservoir\'s life',
  description: 'Set volume = net water, rounded down to the doser\'s step so that it never overdoses; reservoir weeks = reservoir / dose in a day / 7. Four to six weeks is common practice. The label and a qualified person decide the dose.',
  input: DoserSettingBody,
  output: DoserSettingView,
  run: (input: DoserSettingBody): DoserSettingView => {
    const result = doserSetting({
      water: { basinM3: toSi(input.basinVolume), displacedM3: input.displacedVolume ? toSi(input.displacedVolume) : 0, besidesM3: input.besidesVolume ? toSi(input.besidesVolume) : 0 },
      settingStepM3: input.settingStep ? toSi(input.settingStep) : null,
      doseM3: toSi(input.dose),
      doseForM3: toSi(input.doseFor),
      everyDays: input.everyDays ?? 1,
      reservoirM3: toSi(input.reservoir),
    });
    return {
      netWater: { value: fromSi(result.netWaterM3, 'gal'), unit: 'gal' },
      setVolume: { value: fromSi(result.setVolumeM3, 'gal'), unit: 'gal' },
      dosePerDay: { value: fromSi(result.doseM3PerDay, 'L'), unit: 'L' },
      reservoirWeeks: result.reservoirWeeks,
      working: result.working,
      warnings: result.warnings,
    };
  },
});
