import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { shownFlow } from '../../../domain/trade/hydraulics/index.js';
import { type Look, LOOK_NAMES, lookFlow, sheetThickness, waterfall } from '../../../domain/trade/weir/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, MOST_ALTERNATIVES } from '../choice.js';
import { flowLimits } from './flow-parts.js';
import type { PumpChoice } from './pumps.js';
import { inches } from './shown.js';

/** Francis' formula with side contractions holds up to a head of a third of the crest (USBR Water Measurement Manual). */
const FRANCIS_RANGE = 3;

/**
 * Spillways whose lip the loop feeds with the wanted look, the widest first: on a narrower one the same water makes another
 * look. The lip is taken as sharp.
 * @param flowM3PerS of the pump at its operating point
 */
export function chooseSpillways(parts: readonly PartEntity[], flowM3PerS: number, look: Look): Choice {
  const { fitting, ruledOut } = choose(parts, (part) => {
    const lipM = lipOf(part);
    if (lipM === null) return { reason: 'The width of its lip is not in the catalog.' };
    const { least, most } = flowLimits(part);
    if (least !== null && flowM3PerS < least) return { reason: `It needs at least ${shownFlow(least)}; the pump gives ${shownFlow(flowM3PerS)}.` };
    if (most !== null && flowM3PerS > most) return { reason: `It takes up to ${shownFlow(most)}; the pump gives ${shownFlow(flowM3PerS)}.` };
    const needed = lookFlow(look, lipM);
    if (!feeds(flowM3PerS, needed)) return { reason: `A ${look} over its lip of ${inches(lipM)} needs ${shownFlow(needed)}; the pump gives ${shownFlow(flowM3PerS)}.` };
    const thicknessM = sheetThickness('sharp', lipM, flowM3PerS);
    if (thicknessM > lipM / FRANCIS_RANGE) return { reason: `All the pump's water, ${shownFlow(flowM3PerS)}, would stand ${inches(thicknessM)} deep on its lip of ${inches(lipM)}, over a third of the width, where no weir formula holds.` };
    return {
      quantity: new Decimal(1),
      why: `A ${look} over its lip of ${inches(lipM)} needs ${shownFlow(needed)}; the pump gives ${shownFlow(flowM3PerS)}, ${inches(thicknessM)} of water on the lip.`,
      cautions: [...otherLook(look, lipM, flowM3PerS), ...waterfall({ lipWidthM: lipM, lip: 'sharp', wanted: { thicknessM }, pump: null }).warnings],
    };
  });
  return { fitting: [...fitting].sort((a, b) => (lipOf(b.part) ?? 0) - (lipOf(a.part) ?? 0)), ruledOut };
}

/** The first alternative to the suggested pump with which a spillway would do. */
export function otherPump(parts: readonly PartEntity[], look: Look, { fitting, flowsM3PerS }: PumpChoice): string[] {
  for (const [i, flowM3PerS] of flowsM3PerS.slice(0, MOST_ALTERNATIVES + 1).entries()) {
    const [spillway] = chooseSpillways(parts, flowM3PerS, look).fitting;
    const pump = fitting[i];
    if (spillway !== undefined && pump !== undefined) return [`${pump.part.name}, an alternative to the suggested pump, gives ${shownFlow(flowM3PerS)}: enough for a ${look} over ${spillway.part.name}.`];
  }
  return [];
}

/** m */
function lipOf({ attributes }: PartEntity): number | null {
  return attributes?.kind === 'spillway' && attributes.lipWidth ? toSi(attributes.lipWidth) : null;
}

/** 40 gpm over 24 in are exactly a sheet, whatever the last bit says. */
function feeds(flowM3PerS: number, neededM3PerS: number): boolean {
  return flowM3PerS >= neededM3PerS * (1 - 1e-9);
}

/** Looks stand in the order of their flow. */
function otherLook(wanted: Look, lipM: number, flowM3PerS: number): string[] {
  const reached = LOOK_NAMES.filter((look) => feeds(flowM3PerS, lookFlow(look, lipM))).at(-1) ?? wanted;
  return reached === wanted ? [] : [`All the pump's water over a lip of ${inches(lipM)} makes a ${reached}, not a ${wanted}: lead a part of it past the lip, or take a wider one.`];
}
