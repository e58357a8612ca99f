import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { circulationLoop, VELOCITY_LIMITS, yearlyEnergy, type OperatingPoint } from '../../../../domain/trade/hydraulics/index.js';
import { NestedField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { feetPerSecond, inUnit } from './in-us-units.js';
import { PumpBody, toCurve } from './pump.body.js';
import { PumpingSystemBody, toPumpingSystem } from './pumping-system.body.js';

@ApiSchema({ name: 'CirculationLoopInput' })
export class CirculationLoopBody {
  @NestedField(() => PumpingSystemBody, { description: 'Pipes, lift and vessels.' })
  system: PumpingSystemBody;

  @NestedField(() => PumpBody, { description: 'The pump.' })
  pump: PumpBody;

  @QuantityField({ description: 'The water to turn over.', kind: 'volume', minSi: 0.01, maxSi: 1e6, optional: true })
  waterVolume?: Quantity | null;

  @NumberField({ description: 'How many hours a day the pump runs; 24 unless told.', min: 0, max: 24, optional: true, default: 24 })
  hoursPerDay?: number | null;

  @NumberField({ description: 'How many days a year the pump runs; 365 unless told.', min: 0, max: 366, optional: true, default: 365 })
  daysPerYear?: number | null;
}

@ApiSchema({ name: 'OperatingPoint', description: 'Where the curves of pump and system meet.' })
export class OperatingPointView {
  @ApiProperty({ type: QuantityBody, description: 'The flow, in gpm.' })
  flow: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The total dynamic head, in ft.' })
  head: Quantity;
}

@ApiSchema({ name: 'PipeRunLosses', description: 'What one run loses at the flow by Hazen-Williams.' })
export class PipeRunLossesView {
  @ApiProperty({ type: 'number', description: 'The mean velocity in ft/s.' })
  velocityFtPerS: number;

  @ApiProperty({ type: 'number', description: 'The most that a run on this side should see, in ft/s: 4 on suction (common practice), 5 on discharge.' })
  velocityLimitFtPerS: number;

  @ApiProperty({ type: QuantityBody, description: 'Friction by Hazen-Williams, in ft of head.' })
  hazenWilliams: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'Friction by Darcy-Weisbach, in ft of head.' })
  darcyWeisbach: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'Losses of fittings, in ft of head.' })
  minorLoss: Quantity;
}

@ApiSchema({ name: 'CirculationLoop' })
export class CirculationLoopView extends ComputedView {
  @ApiProperty({ type: OperatingPointView, nullable: true, description: 'With friction by Hazen-Williams; null when pump and system do not meet within the pump\'s curve.' })
  hazenWilliams: OperatingPointView | null;

  @ApiProperty({ type: OperatingPointView, nullable: true, description: 'With friction by Darcy-Weisbach; null when pump and system do not meet within the pump\'s curve.' })
  darcyWeisbach: OperatingPointView | null;

  @ApiProperty({ type: [PipeRunLossesView], description: 'Run by run.' })
  runs: PipeRunLossesView[];

  @ApiProperty({ type: QuantityBody, nullable: true, description: 'The time that all the water takes through the pump, in h.' })
  turnoverTime: Quantity | null;

  @ApiProperty({ type: 'number', nullable: true, description: 'How much of the electrical power reaches the water, in percent; null without the pump\'s watts.' })
  wireToWaterPercent: number | null;

  @ApiProperty({ type: 'number', nullable: true, description: 'The energy of a year in kWh; null without the pump\'s watts.' })
  energyKwhPerYear: number | null;
}

export const CIRCULATION_LOOP = calculation({
  name: 'circulation-loop',
  title: 'Operating point of a pump in a circulation loop',
  description:
    'Static lift, friction by Hazen-Williams and beside it by Darcy-Weisbach (Colebrook), fittings (table of the Crane TP-410 type) and vessels against the pump\'s curve, which is interpolated without rising. The losses of the runs are those at the flow by Hazen-Williams. Electrical work near water belongs to a licensed electrician and to local code.',
  input: CirculationLoopBody,
  output: CirculationLoopView,
  run: ({ system, pump, waterVolume, hoursPerDay, daysPerYear }: CirculationLoopBody): CirculationLoopView => {
    const pumping = toPumpingSystem(system);
    const powerW = pump.powerWatts ?? null;
    const loop = circulationLoop({ system: pumping, pump: { curve: toCurve(pump.curve), powerW }, waterVolumeM3: waterVolume ? toSi(waterVolume) : null });
    return {
      hazenWilliams: toPointView(loop.hazenWilliams),
      darcyWeisbach: toPointView(loop.darcyWeisbach),
      runs: loop.runs.map(({ velocity, hazenWilliamsM, darcyWeisbachM, minorM }, i) => ({
        velocityFtPerS: feetPerSecond(velocity),
        velocityLimitFtPerS: feetPerSecond(VELOCITY_LIMITS[pumping.runs[i]?.side ?? 'suction']),
        hazenWilliams: inUnit(hazenWilliamsM, 'ft'),
        darcyWeisbach: inUnit(darcyWeisbachM, 'ft'),
        minorLoss: inUnit(minorM, 'ft'),
      })),
      turnoverTime: inUnit(loop.turnoverHours, 'h'),
      wireToWaterPercent: loop.wireToWater === null ? null : loop.wireToWater * 100,
      energyKwhPerYear: powerW === null ? null : yearlyEnergy(powerW, hoursPerDay ?? 24, daysPerYear ?? 365),
      working: loop.working,
      warnings: loop.warnings,
    };
  },
});

function toPointView(point: OperatingPoint): OperatingPointView | null {
  return point.kind === 'point' ? { flow: inUnit(point.flow, 'gpm'), head: inUnit(point.head, 'ft') } : null;
}
