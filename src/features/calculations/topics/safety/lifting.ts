import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { convert, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { COUPLINGS, LIFT_DURATIONS, liftCheck, type Coupling, type HandPosition, type LiftDuration } from '../../../../domain/trade/safety/index.js';
import { ChoiceField, NestedField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { CautionsView } from './cautions.view.js';

@ApiSchema({ name: 'HandPosition', description: 'Where the hands are at one end of a lift.' })
export class HandPositionBody {
  @QuantityField({ description: 'From between the ankles to the hands, level.', kind: 'length', minSi: 0, maxSi: 3 })
  reach: Quantity;

  @QuantityField({ description: 'Height of the hands above the floor.', kind: 'length', minSi: 0, maxSi: 3 })
  height: Quantity;

  @NumberField({ description: 'How far the body is turned, in degrees (180 is half way round); 0 unless told.', min: 0, max: 180, optional: true, default: 0 })
  turnDegrees?: number | null;
}

@ApiSchema({ name: 'LiftingInput' })
export class LiftingBody {
  @QuantityField({ description: 'The weight of the stone.', kind: 'mass', minSi: 0.01, maxSi: 100_000 })
  load: Quantity;

  @NestedField(() => HandPositionBody, { description: 'Where the lift starts.' })
  start: HandPositionBody;

  @NestedField(() => HandPositionBody, { description: 'Where it ends.' })
  end: HandPositionBody;

  @NumberField({ description: 'The number of lifts in a minute; 0.2 unless told.', min: 0, max: 30, optional: true, default: 0.2 })
  liftsPerMinute?: number | null;

  @ChoiceField({ description: 'How long lifting goes on; up to 1 h unless told.', of: LIFT_DURATIONS, optional: true, default: 'up-to-1-h' })
  duration?: LiftDuration | null;

  @ChoiceField({ description: 'How well the hands hold it; poor unless told, as with most stones.', of: COUPLINGS, optional: true, default: 'poor' })
  coupling?: Coupling | null;
}

@ApiSchema({ name: 'Lifting' })
export class LiftingView extends CautionsView {
  @ApiProperty({ type: QuantityBody, description: 'The recommended weight limit at the start, in lb.' })
  startLimit: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The recommended weight limit at the end, in lb.' })
  endLimit: Quantity;

  @ApiProperty({ type: 'number', nullable: true, description: 'The lifting index: the load against the smaller limit, a factor; null when the limit is 0.' })
  liftingIndex: number | null;
}

export const LIFTING = calculation({
  name: 'lifting',
  title: 'Cautions for lifting a stone by hand',
  description: 'The revised NIOSH lifting equation (94-110, rev. 9/2021) at both ends of the lift, for one person, two hands, dry level ground. Frequency and coupling tables as transcribed publicly. It warns and never permits: the employer\'s safety program and the rules of the place decide.',
  input: LiftingBody,
  output: LiftingView,
  run: (input: LiftingBody): LiftingView => {
    const position = ({ reach, height, turnDegrees }: HandPositionBody): HandPosition => ({ reachM: toSi(reach), heightM: toSi(height), turnDegrees: turnDegrees ?? 0 });
    const { startLimitKg, endLimitKg, liftingIndex, cautions, working } = liftCheck({
      loadKg: toSi(input.load),
      start: position(input.start),
      end: position(input.end),
      liftsPerMinute: input.liftsPerMinute ?? 0.2,
      duration: input.duration ?? 'up-to-1-h',
      coupling: input.coupling ?? 'poor',
    });
    const pounds = (kg: number): Quantity => ({ value: convert(kg, 'kg', 'lb'), unit: 'lb' });
    return { startLimit: pounds(startLimitKg), endLimit: pounds(endLimitKg), liftingIndex, cautions, working, warnings: [] };
  },
});
