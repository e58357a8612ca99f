import { ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { FITTING_KINDS, VISCOSITY_RANGE_C, type FittingKind, type PipeRun, type PumpingSystem } from '../../../../domain/trade/hydraulics/index.js';
import { celsiusOf, ChoiceField, IntegerField, ListField, NumberField, QuantityField, TemperatureField, TextField, type TemperatureBody } from '../../../../platform/http/fields/index.js';

/** Smooth plastic pipe, 5e-6 ft, in m. */
const PLASTIC_ROUGHNESS_M = 5e-6 * 0.3048;
const PLASTIC_C = 150;
/** 60 °F, at which the published tables stand. */
const TABLE_TEMPERATURE_C = (60 - 32) / 1.8;

@ApiSchema({ name: 'FittingCount', description: 'Fittings of one kind in a pipe run.' })
export class FittingCountBody {
  @ChoiceField({ description: 'What it is.', of: FITTING_KINDS })
  kind: FittingKind;

  @IntegerField({ description: 'How many of them.', min: 1, max: 1000 })
  count: number;
}

@ApiSchema({ name: 'PipeRunInput', description: 'A stretch of pipe of one size.' })
export class PipeRunBody {
  @ChoiceField({ description: 'Before or after the pump; the limits of velocity differ.', of: ['suction', 'discharge'] })
  side: PipeRun['side'];

  @QuantityField({ description: 'The inner diameter, not the nominal size: 2 in pipe of Schedule 40 has 2.067 in.', kind: 'length', minSi: 0.005, maxSi: 2 })
  innerDiameter: Quantity;

  @QuantityField({ description: 'The length of the pipe.', kind: 'length', minSi: 0, maxSi: 10_000 })
  length: Quantity;

  @NumberField({ description: 'The Hazen-Williams factor C; 150, plastic, unless told. Corrugated hose has much less.', min: 40, max: 160, optional: true, default: PLASTIC_C })
  hazenWilliamsC?: number | null;

  @QuantityField({ description: 'The absolute roughness for Darcy-Weisbach; 0.0015 mm, plastic, unless told.', kind: 'length', minSi: 0, maxSi: 0.01, optional: true })
  roughness?: Quantity | null;

  @ListField(() => FittingCountBody, { description: 'The fittings of this run.', most: 20, optional: true })
  fittings?: FittingCountBody[] | null;

  @NumberField({ description: 'The sum of K, a factor of V²/2g, of what is not among the fittings; 0 unless told.', min: 0, max: 10_000, optional: true, default: 0 })
  otherK?: number | null;
}

@ApiSchema({ name: 'VesselLossInput', description: 'A filter, skimmer or other vessel whose loss is known at one flow; it goes with the square of the flow.' })
export class VesselLossBody {
  @TextField({ description: 'What it is.', max: 100, example: 'skimmer' })
  name: string;

  @QuantityField({ description: 'The flow at which its loss is known.', kind: 'flow', minSi: 1e-6, maxSi: 10 })
  flow: Quantity;

  @QuantityField({ description: 'Its loss of head at that flow.', kind: 'length', minSi: 0, maxSi: 100 })
  head: Quantity;
}

@ApiSchema({ name: 'PumpingSystemInput', description: 'What a pump works against.' })
export class PumpingSystemBody {
  @ListField(() => PipeRunBody, { description: 'The pipe runs, all of which the whole flow goes through.', fewest: 1, most: 50 })
  runs: PipeRunBody[];

  @QuantityField({ description: 'The height from the water that the pump draws from up to the water that it delivers to.', kind: 'length', minSi: 0, maxSi: 100 })
  staticLift: Quantity;

  @ListField(() => VesselLossBody, { description: 'Filters, skimmers and other vessels in the loop.', most: 20, optional: true })
  vessels?: VesselLossBody[] | null;

  @TemperatureField({ description: 'The water\'s temperature, for Darcy-Weisbach; 60 degF unless told.', minC: VISCOSITY_RANGE_C.min, maxC: VISCOSITY_RANGE_C.max, optional: true })
  waterTemperature?: TemperatureBody | null;
}

export function toPumpingSystem({ runs, staticLift, vessels, waterTemperature }: PumpingSystemBody): PumpingSystem {
  return {
    runs: runs.map((run) => ({
      side: run.side,
      innerDiameterM: toSi(run.innerDiameter),
      lengthM: toSi(run.length),
      hazenWilliamsC: run.hazenWilliamsC ?? PLASTIC_C,
      roughnessM: run.roughness ? toSi(run.roughness) : PLASTIC_ROUGHNESS_M,
      fittings: run.fittings ?? [],
      otherK: run.otherK ?? 0,
    })),
    staticLiftM: toSi(staticLift),
    vessels: (vessels ?? []).map(({ name, flow, head }) => ({ name, flowM3PerS: toSi(flow), headM: toSi(head) })),
    waterTemperatureC: waterTemperature ? celsiusOf(waterTemperature) : TABLE_TEMPERATURE_C,
  };
}
