import { Decimal } from '../src/domain/decimal.js';
import { rankPumps, systemCurve, type PipeRun, type PumpOffer } from '../src/domain/trade/hydraulics/index.js';
import { cpuMilliseconds, type Measurement } from './measure.js';

const PUMPS = 500;
const POINTS = 12;
const GPM = 6.30901964e-5;

/** Invented pumps of 20 to 70 ft that give up between 40 and 140 gpm. */
const OFFERS: PumpOffer[] = Array.from({ length: PUMPS }, (_, i) => ({
  name: `Pump ${i}`,
  curve: Array.from({ length: POINTS }, (__, j) => {
    const share = j / (POINTS - 1);
    return { flowM3PerS: share * (40 + ((i * 37) % 100)) * GPM, headM: (20 + ((i * 17) % 50)) * 0.3048 * (1 - share * share) };
  }),
  powerW: 600 + i,
  price: new Decimal('199.00').plus(i),
}));

const run = (side: PipeRun['side'], innerDiameterM: number, lengthM: number): PipeRun => ({
  side,
  innerDiameterM,
  lengthM,
  hazenWilliamsC: 150,
  roughnessM: 1.5e-6,
  fittings: [{ kind: 'elbow-90', count: 4 }],
  otherK: 1.78,
});

/** From the measured pipes to the ranked list: nothing is kept from one round to the next. */
function rankAll(): void {
  const system = systemCurve({ runs: [run('suction', 0.0779, 2), run('discharge', 0.0525, 18), run('discharge', 0.0409, 3)], staticLiftM: 2.4, vessels: [{ name: 'filter', flowM3PerS: 50 * GPM, headM: 1 }], waterTemperatureC: 15 });
  rankPumps(OFFERS, system, { wantedFlow: 30 * GPM, hoursPerDay: 24, daysPerYear: 365, energyRate: new Decimal('0.16'), currency: 'USD' });
}

export function benchPumpRanking(): Measurement {
  const ours = cpuMilliseconds(rankAll);
  return { name: `ranking ${PUMPS} pumps of ${POINTS} points on one system (CPU)`, ours, yardstick: null, ratio: null, unit: 'ms', target: 'under 50 ms', met: ours < 50 };
}
