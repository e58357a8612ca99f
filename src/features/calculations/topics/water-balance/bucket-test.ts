import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { compareLeaks, leakRate } from '../../../../domain/trade/water-balance/index.js';
import { BooleanField, ListField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

const SIXTEENTH_INCH_M = 0.0254 / 16;

@ApiSchema({ name: 'BucketRun', description: 'One bucket test: a weighted bucket on a step, both levels marked, auto-fill off, no rain.' })
export class BucketRunBody {
  @QuantityField({ description: 'How far the pond fell; below 0 when it rose.', kind: 'length', minSi: -1, maxSi: 3 })
  pondDrop: Quantity;

  @QuantityField({ description: 'How far the water in the bucket fell.', kind: 'length', minSi: -1, maxSi: 1 })
  bucketDrop: Quantity;

  @QuantityField({ description: 'How long the test took.', kind: 'time', minSi: 1, maxSi: 336 })
  duration: Quantity;

  @BooleanField({ description: 'Whether the pump ran: with it the stream and the pipes are tested too, without it the basin alone.' })
  pumpRunning: boolean;
}

@ApiSchema({ name: 'BucketTestInput' })
export class BucketTestBody {
  @QuantityField({ description: 'The water surface.', kind: 'area', minSi: 0.01, maxSi: 10_000_000 })
  area: Quantity;

  @ListField(() => BucketRunBody, { description: 'The tests, with the pump on, off or both.', fewest: 1, most: 50 })
  runs: BucketRunBody[];

  @QuantityField({ description: 'How closely one mark can be read, plus or minus; 1/16 in unless told (common practice).', kind: 'length', minSi: 0.0001, maxSi: 0.05, optional: true })
  reading?: Quantity | null;

  @NumberField({ description: 'How closely the water surface is known, plus or minus, in percent; 5 unless told.', min: 0, max: 50, optional: true, default: 5 })
  areaPercent?: number | null;
}

@ApiSchema({ name: 'LeakFigure', description: 'The leak with the pump on or off.' })
export class LeakFigureView {
  @ApiProperty({ type: 'boolean', description: 'Whether the pump ran.' })
  pumpRunning: boolean;

  @ApiProperty({ type: QuantityBody, description: 'The leak in a day, in gal; below 0 when the pond gained water.' })
  leakPerDay: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'Half of the interval that holds it with about 95 % certainty, in gal a day.' })
  uncertainty: Quantity;

  @ApiProperty({ type: 'boolean', description: 'Whether a leak is shown: the whole interval lies above 0. If not, one smaller than the uncertainty may still be there.' })
  leakShown: boolean;
}

@ApiSchema({ name: 'BucketTest' })
export class BucketTestView extends ComputedView {
  @ApiProperty({ type: [LeakFigureView], description: 'The leak for each state of the pump that was tested.' })
  leaks: LeakFigureView[];
}

export const BUCKET_TEST = calculation({
  name: 'bucket-test',
  title: 'Leak rate from a bucket test, with its uncertainty',
  description: '(Pond drop − bucket drop) × area for a day, with an interval of about 95 % from how closely marks and area are known and from how far repeated tests disagree (GUM, JCGM 100:2008). The test itself is common practice. 48 h halve the error of reading.',
  input: BucketTestBody,
  output: BucketTestView,
  run: (input: BucketTestBody): BucketTestView => {
    const states = [false, true].filter((running) => input.runs.some((run) => run.pumpRunning === running));
    const rates = states.map((pumpRunning) => {
      const runs = input.runs.filter((run) => run.pumpRunning === pumpRunning).map((run) => ({ pondDropM: toSi(run.pondDrop), bucketDropM: toSi(run.bucketDrop), hours: toSi(run.duration) }));
      return { pumpRunning, ...leakRate(runs, toSi(input.area), { readingM: input.reading ? toSi(input.reading) : SIXTEENTH_INCH_M, areaPercent: input.areaPercent ?? 5 }) };
    });
    const first = rates[0]?.working;
    return {
      leaks: rates.map(({ pumpRunning, leakM3PerDay, uncertaintyM3PerDay }) => ({
        pumpRunning,
        leakPerDay: { value: fromSi(leakM3PerDay, 'gal'), unit: 'gal' },
        uncertainty: { value: fromSi(uncertaintyM3PerDay, 'gal'), unit: 'gal' },
        leakShown: leakM3PerDay > uncertaintyM3PerDay,
      })),
      working: {
        rule: first?.rule ?? '',
        inputs: first?.inputs ?? [],
        steps: rates.flatMap(({ pumpRunning, working }) => working.steps.map((one) => ({ ...one, label: `${pumpRunning ? 'pump on' : 'pump off'}: ${one.label}` }))),
      },
      warnings: compareLeaks(rates),
    };
  },
});
