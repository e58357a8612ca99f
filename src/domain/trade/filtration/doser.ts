import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { LABEL_DECIDES } from '../chemistry/label.js';
import { given, step } from '../working-lines.js';
import { netWaterM3, type WaterParts } from './net-volume.js';

/** Weeks that a reservoir usually lasts: common practice. */
export const USUAL_RESERVOIR_WEEKS = { least: 4, most: 6 } as const;

export interface DoserInput {
  readonly water: WaterParts;
  /** The volume that the doser can be set to goes in steps of this; null when it takes any volume. */
  readonly settingStepM3: number | null;
  /** The label's dose for a volume of water, given every so many days. */
  readonly doseM3: number;
  readonly doseForM3: number;
  readonly everyDays: number;
  /** What the reservoir holds when it is filled. */
  readonly reservoirM3: number;
}

export interface DoserSetting {
  readonly netWaterM3: number;
  readonly setVolumeM3: number;
  readonly doseM3PerDay: number;
  readonly reservoirWeeks: number;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * The volume to set an automatic doser to, and how long its reservoir lasts at that setting. The setting is rounded
 * down to the doser's step, since a setting above the real water overdoses it every day.
 * @throws DomainError at /basinVolume, /displacedVolume, /besidesVolume, /settingStep, /dose, /doseFor, /everyDays or /reservoir
 */
export function doserSetting({ water, settingStepM3, doseM3, doseForM3, everyDays, reservoirM3 }: DoserInput): DoserSetting {
  const net = netWaterM3(water);
  if (settingStepM3 !== null) requirePositive('/settingStep', settingStepM3);
  requirePositive('/dose', doseM3);
  requirePositive('/doseFor', doseForM3);
  requireWithin('/everyDays', everyDays, 1 / 24, 60, 'days');
  requirePositive('/reservoir', reservoirM3);
  // A whole number of steps must stay whole though 0.3 / 0.1 is 2.9999…; a billionth of a step is no overdose.
  const setVolumeM3 = settingStepM3 === null ? net : Math.floor(net / settingStepM3 + 1e-9) * settingStepM3;
  if (setVolumeM3 <= 0) throw DomainError.at('/settingStep', 'This must not be more than the net water volume: the doser is made for larger ponds.');
  const doseM3PerDay = ((setVolumeM3 / doseForM3) * doseM3) / everyDays;
  const reservoirWeeks = reservoirM3 / doseM3PerDay / 7;
  const working: Working = {
    rule: 'net water = basin − displaced + pipes and filters; set volume = net water rounded down to a step; reservoir weeks = reservoir / dose in a day / 7',
    inputs: [
      given('basin', water.basinM3, 'm3'),
      given('displaced', water.displacedM3, 'm3'),
      given('pipes and filters', water.besidesM3, 'm3'),
      ...(settingStepM3 === null ? [] : [given('setting step', settingStepM3, 'm3')]),
      given('dose', doseM3, 'm3', `for ${plain(doseForM3)} m3 of water every ${plain(everyDays)} days`),
      given('reservoir', reservoirM3, 'm3'),
    ],
    steps: [
      step('net water', `${plain(water.basinM3)} − ${plain(water.displacedM3)} + ${plain(water.besidesM3)}`, net, 'm3'),
      step('set volume', settingStepM3 === null ? 'the net water' : `the most steps of ${plain(settingStepM3)} in ${plain(net)}`, setVolumeM3, 'm3'),
      step('dose in a day', `${plain(setVolumeM3)} / ${plain(doseForM3)} × ${plain(doseM3)} / ${plain(everyDays)}`, doseM3PerDay, 'm3'),
      step('reservoir lasts', `${plain(reservoirM3)} / ${plain(doseM3PerDay)} / 7`, reservoirWeeks, 'weeks'),
    ],
  };
  return { netWaterM3: net, setVolumeM3, doseM3PerDay, reservoirWeeks, working, warnings: warningsOf(net, setVolumeM3, reservoirWeeks) };
}

function warningsOf(net: number, set: number, weeks: number): string[] {
  const { least, most } = USUAL_RESERVOIR_WEEKS;
  return [
    LABEL_DECIDES,
    ...(set < net * 0.9 ? ['Rounded down, the setting is more than a tenth below the water: a finer step doses better.'] : []),
    ...(weeks < least ? ['The reservoir lasts less than the usual four to six weeks (common practice): plan visits, or a larger one.'] : []),
    ...(weeks > most ? ['The reservoir lasts longer than the usual four to six weeks (common practice): see that the product keeps that long, and check the dose rate.'] : []),
  ];
}
