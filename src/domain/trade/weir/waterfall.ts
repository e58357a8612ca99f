import { plain } from '../../decimal.js';
import { within } from '../../errors.js';
import type { Working } from '../../working.js';
import type { CurvePoint } from '../pump-curve/index.js';
import { operatingPoint, pumpCurve, shownFlow, systemCurve, type PumpingSystem } from '../hydraulics/index.js';
import { lipFlow, LIPS, lookFlow, LOOKS, sheetThickness, type LipKind, type Look } from './lip.js';

export interface WaterfallInput {
  readonly lipWidthM: number;
  readonly lip: LipKind;
  /** Either a look, or a thickness of the sheet above the lip, m. */
  readonly wanted: { readonly look: Look } | { readonly thicknessM: number };
  readonly pump: { readonly system: PumpingSystem; readonly curve: readonly CurvePoint[] } | null;
}

export interface Waterfall {
  /** m3/s that the look or the thickness needs. */
  readonly neededFlow: number;
  /** m: the head over the lip, a little upstream of it; the falling sheet itself is thinner. */
  readonly thicknessM: number;
  /** m3/s and m that the pump gives at its operating point (Hazen-Williams); null without one. */
  readonly pumpFlow: number | null;
  readonly pumpThicknessM: number | null;
  readonly pumpGivesIt: boolean | null;
  readonly working: Working;
  readonly warnings: string[];
}

/** 0.2 ft: below it no weir formula is proven (USBR). */
const PROVEN_HEAD_M = 0.2 * 0.3048;

/**
 * The flow that a waterfall wants, and whether a pump gives it where its curve meets its piping.
 * @throws DomainError at /lipWidth, /sheetThickness, /system/…, /pump/curve/i/…
 */
export function waterfall({ lipWidthM, lip, wanted, pump }: WaterfallInput): Waterfall {
  const byLook = 'look' in wanted;
  const neededFlow = byLook ? lookFlow(wanted.look, lipWidthM) : lipFlow(lip, lipWidthM, wanted.thicknessM);
  const thicknessM = byLook ? sheetThickness(lip, lipWidthM, neededFlow) : wanted.thicknessM;
  const point = pump && operatingPoint(within('/pump/curve', () => pumpCurve(pump.curve)), within('/system', () => systemCurve(pump.system)), 'hazen-williams');
  const pumpFlow = point?.kind === 'point' ? point.flow : null;
  const pumpThicknessM = pumpFlow === null ? null : sheetThickness(lip, lipWidthM, pumpFlow);
  const pumpGivesIt = point === null ? null : pumpFlow !== null && pumpFlow >= neededFlow;
  const c = `${LIPS[lip]} × √0.3048`;
  const [width, flow] = [plain(lipWidthM), plain(neededFlow)];
  const working: Working = {
    rule: 'Flow over a lip = C × width × (sheet thickness)^1.5',
    inputs: [
      { name: 'lip width', value: width, unit: 'm' },
      { name: 'coefficient C, in ft and ft3/s', value: plain(LIPS[lip]), source: lip },
      ...(byLook ? [{ name: 'flow for the look, for each inch of lip', value: plain(LOOKS[wanted.look]), unit: 'gph', source: `${wanted.look}: common practice` }] : []),
    ],
    steps: [
      byLook
        ? { label: 'flow needed', expression: `${LOOKS[wanted.look]} × 0.003785411784 / 3600 / 0.0254 × ${width}`, value: flow, unit: 'm3/s' }
        : { label: 'flow needed', expression: `${c} × ${width} × ${plain(thicknessM)}^1.5`, value: flow, unit: 'm3/s' },
      { label: 'sheet thickness', expression: byLook ? `(${flow} / (${c} × ${width}))^(2/3)` : 'as wanted', value: plain(thicknessM), unit: 'm' },
      ...(pumpFlow === null ? [] : [{ label: 'flow of the pump', expression: 'bisection of pump head − system head', value: plain(pumpFlow), unit: 'm3/s' }]),
      ...(pumpFlow === null || pumpThicknessM === null ? [] : [{ label: 'sheet thickness with the pump', expression: `(${plain(pumpFlow)} / (${c} × ${width}))^(2/3)`, value: plain(pumpThicknessM), unit: 'm' }]),
    ],
  };
  const warnings = [
    ...(thicknessM < PROVEN_HEAD_M ? ['The sheet is thinner than 0.2 ft (61 mm), for which weir formulas are proven: take flow and thickness as good to 25 %.'] : []),
    ...(lip === 'flat-stone' ? ['Stone lips differ: the coefficient lies between 2.63 and 3.1, and water finds the low places of an uneven stone.'] : []),
    ...(point && point.kind !== 'point' ? ['Pump and piping do not meet within the pump\'s curve; see the circulation loop for the reason.'] : []),
    ...(pumpFlow !== null && pumpFlow < neededFlow ? [`The pump gives ${shownFlow(pumpFlow)} of the ${shownFlow(neededFlow)} needed.`] : []),
  ];
  return { neededFlow, thicknessM, pumpFlow, pumpThicknessM, pumpGivesIt, working, warnings };
}
