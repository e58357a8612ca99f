import { Decimal } from '../../../domain/decimal.js';
import { convert, toSi } from '../../../domain/quantity/index.js';
import { doserSetting, USUAL_RESERVOIR_WEEKS } from '../../../domain/trade/filtration/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, type Verdict } from '../choice.js';
import { gallons } from './shown.js';

type Doser = Extract<NonNullable<PartEntity['attributes']>, { kind: 'doser' }>;

const UNSAID = 'the catalog does not say for which volume of water that dose is';
const { least: LEAST_WEEKS, most: MOST_WEEKS } = USUAL_RESERVOIR_WEEKS;

/**
 * Dosers whose reservoir lasts at least as long as is usual at the setting for this water. Those that do not say which water
 * their dose is for come last: nobody has checked them against it.
 * @param netWaterM3 the water less what rock and gravel displace; null when it was not measured
 */
export function chooseDosers(parts: readonly PartEntity[], netWaterM3: number | null): Choice {
  const choice = choose(parts, ({ attributes }) => {
    if (attributes?.kind !== 'doser' || !attributes.reservoirVolume || !attributes.dosePerDay) return { reason: 'Its reservoir and its dose in a day are not in the catalog.' };
    if (attributes.doseFor && netWaterM3 === null) return { reason: 'Its dose goes by the water volume, which needs rod readings in the survey.' };
    const judged = { reservoirM3: toSi(attributes.reservoirVolume), doseM3: toSi(attributes.dosePerDay) };
    return attributes.doseFor && netWaterM3 !== null ? forWater({ ...judged, doseForM3: toSi(attributes.doseFor) }, attributes, netWaterM3) : withoutWater(judged);
  });
  const checked = ({ part }: { part: PartEntity }): boolean => part.attributes?.kind === 'doser' && Boolean(part.attributes.doseFor);
  return { ...choice, fitting: [...choice.fitting.filter(checked), ...choice.fitting.filter((one) => !checked(one))] };
}

function forWater({ reservoirM3, doseM3, doseForM3 }: { reservoirM3: number; doseM3: number; doseForM3: number }, { settingStep }: Doser, netWaterM3: number): Verdict {
  const settingStepM3 = settingStep ? toSi(settingStep) : null;
  if (settingStepM3 !== null && settingStepM3 > netWaterM3 * (1 + 1e-9)) return { reason: `Its least setting is ${gallons(settingStepM3)}, and the net water is ${gallons(netWaterM3)}: it would overdose every day.` };
  const { setVolumeM3, doseM3PerDay, reservoirWeeks, warnings } = doserSetting({ water: { basinM3: netWaterM3, displacedM3: 0, besidesM3: 0 }, settingStepM3, doseM3, doseForM3, everyDays: 1, reservoirM3 });
  if (reservoirWeeks < LEAST_WEEKS) return tooSmall(reservoirWeeks);
  return { quantity: new Decimal(1), why: `Set to ${gallons(setVolumeM3)} for a net water volume of ${gallons(netWaterM3)}, it gives ${millilitres(doseM3PerDay)} a day, and its reservoir lasts ${reservoirWeeks.toFixed(1)} weeks.`, cautions: warnings };
}

function withoutWater({ reservoirM3, doseM3 }: { reservoirM3: number; doseM3: number }): Verdict {
  const weeks = reservoirM3 / doseM3 / 7;
  if (weeks < LEAST_WEEKS) return tooSmall(weeks);
  return { quantity: new Decimal(1), why: `Its reservoir lasts ${weeks.toFixed(1)} weeks at its dose rate; ${UNSAID}.`, cautions: [`The doser is not checked against the water: ${UNSAID}. Its label decides.`] };
}

function tooSmall(weeks: number): { reason: string } {
  return { reason: `Its reservoir lasts ${weeks.toFixed(1)} weeks; ${LEAST_WEEKS} to ${MOST_WEEKS} are usual (common practice).` };
}

function millilitres(m3: number): string {
  return `${(convert(m3, 'm3', 'L') * 1000).toFixed(1)} mL`;
}
