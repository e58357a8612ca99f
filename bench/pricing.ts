import { Decimal } from '../src/domain/decimal.js';
import { laborLine, partLine, quoteTotals } from '../src/domain/pricing/index.js';
import { takeoff } from '../src/domain/trade/index.js';
import { cpuMilliseconds, type Measurement } from './measure.js';

const LABOR = 20;
const PARTS = 40;
const CURRENCY = 'USD';

/** A 60-line quote from the survey to the totals, working included. The numbers are invented. */
function priceQuote(): void {
  const { sedimentVolumeM3 } = takeoff({
    outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } },
    probes: { unit: 'in', readings: [18, 20, 22, 16].map((toSediment, i) => ({ toSediment, toBottom: toSediment + 8 + i })) },
  });
  const labor = Array.from({ length: LABOR }, (_, i) =>
    laborLine({
      quantity: { name: 'sedimentVolume', value: sedimentVolumeM3 ?? 0, unit: 'm3' },
      rule: { id: `rule-${i}`, name: `Rule ${i}`, costCode: 'cleanout', unit: 'yd3', setupHours: new Decimal(3), hoursPerUnit: new Decimal('1.75').plus(i), minimumHours: new Decimal(6) },
      accessFactor: new Decimal('1.15'),
      hourIncrement: new Decimal('0.25'),
      sellRate: new Decimal('68.00'),
      currency: CURRENCY,
    }),
  );
  const parts = Array.from({ length: PARTS }, (_, i) =>
    partLine({ id: `part-${i}`, name: `Part ${i}`, unitCost: new Decimal('12.35').plus(i), markupPercent: new Decimal(35), packSize: new Decimal(i % 3 === 0 ? 10 : 1), quantity: new Decimal(7 + i), currency: CURRENCY }),
  );
  const lines = [...labor.map(({ amount }) => ({ category: null, amount })), ...parts.map(({ amount }) => ({ category: 'materials', amount }))];
  quoteTotals(lines, [{ code: 'materials', name: 'Sales tax', rate: new Decimal('6.25') }], CURRENCY);
}

/** The largest survey that is taken: 5,000 readings in an outline of 2,000 points. */
function largestTakeoff(): void {
  const points = Array.from({ length: 2_000 }, (_, i): [number, number] => {
    const turn = (2 * Math.PI * i) / 2_000;
    const radius = 40 + 3 * Math.sin(7 * turn);
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
  const readings = Array.from({ length: 5_000 }, (_, i) => ({ at: [((i * 7_919) % 80) - 40, ((i * 104_729) % 80) - 40] as [number, number], toSediment: 10 + (i % 13), toBottom: 23 + (i % 17) }));
  takeoff({ outline: { shape: 'polygon', unit: 'ft', points }, probes: { unit: 'in', readings } });
}

export function benchTakeoff(): Measurement {
  const ours = cpuMilliseconds(largestTakeoff);
  return { name: 'takeoff of 5,000 readings in an outline of 2,000 points (CPU)', ours, yardstick: null, ratio: null, unit: 'ms', target: 'under 50 ms', met: ours < 50 };
}

export function benchPricing(): Measurement {
  const ours = cpuMilliseconds(priceQuote);
  return { name: `pricing a ${LABOR + PARTS}-line quote, takeoff and working included (CPU)`, ours, yardstick: null, ratio: null, unit: 'ms', target: 'under 5 ms', met: ours < 5 };
}
