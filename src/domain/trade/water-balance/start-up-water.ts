import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';

/** From this share of new water on, temperature and chemistry of a pond with fish change at once. */
const LARGE_CHANGE = 0.25;

export interface StartUpWaterInput {
  /** The pond when full, without rock and gravel taken off; m3, above 0. */
  readonly pondM3: number;
  /** What rock and gravel displace; m3. */
  readonly displacedM3: number;
  /** Pipes, filters, skimmers, basins and streams; m3. */
  readonly systemM3: number;
  /** Old water that was kept and goes back; m3. */
  readonly keptM3: number;
  /** Water for washing out, which is pumped off again; m3. */
  readonly rinsingM3: number;
  /** Flow of the supply; m3/s; null when unknown. */
  readonly supplyM3PerS: number | null;
}

export interface StartUpWater {
  /** What the system holds when it runs; m3. */
  readonly runningM3: number;
  /** What must come from the supply; m3. */
  readonly supplyM3: number;
  readonly fillHours: number | null;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * Water for refill and start-up: running volume = pond − displaced + system; supply = running − kept + rinsing. Definition.
 * @throws DomainError at /pond, /displaced or /kept when the parts don't fit into the whole
 */
export function startUpWater({ pondM3, displacedM3, systemM3, keptM3, rinsingM3, supplyM3PerS }: StartUpWaterInput): StartUpWater {
  if (!(pondM3 > 0)) throw DomainError.at('/pond', 'The volume of the pond must be more than 0.');
  if (displacedM3 >= pondM3) throw DomainError.at('/displaced', 'Rock and gravel can not displace the whole pond; check both volumes and their units.');
  const runningM3 = pondM3 - displacedM3 + systemM3;
  if (keptM3 > runningM3) throw DomainError.at('/kept', 'More water is kept than the system holds; check the volumes and their units.');
  const newM3 = runningM3 - keptM3;
  const supplyM3 = newM3 + rinsingM3;
  const fillHours = supplyM3PerS === null ? null : supplyM3 / supplyM3PerS / 3600;
  const warnings: string[] = [];
  if (newM3 > runningM3 * LARGE_CHANGE) {
    warnings.push('Much of the water is new: before fish go in, treat chlorine or chloramine by the label, and compare temperature, pH and alkalinity (common practice).');
  }
  const working: Working = {
    rule: 'running volume = pond − displaced + system; supply = running volume − kept + rinsing',
    inputs: [given('pond', pondM3, 'm3'), given('displaced', displacedM3, 'm3'), given('system', systemM3, 'm3'), given('kept', keptM3, 'm3'), given('rinsing', rinsingM3, 'm3')],
    steps: [
      step('running volume', `${plain(pondM3)} − ${plain(displacedM3)} + ${plain(systemM3)}`, runningM3, 'm3'),
      step('supply', `${plain(runningM3)} − ${plain(keptM3)} + ${plain(rinsingM3)}`, supplyM3, 'm3'),
      ...(supplyM3PerS === null || fillHours === null ? [] : [step('time to fill', `${plain(supplyM3)} / ${plain(supplyM3PerS)} m3/s / 3600`, fillHours, 'h')]),
    ],
  };
  return { runningM3, supplyM3, fillHours, warnings, working };
}
