import { plain } from '../../decimal.js';
import type { Working, WorkingStep } from '../../working.js';
import { GRAVITY } from '../hydraulics/water.js';
import { given, step } from '../working-lines.js';
import type { Basin, DrainBack } from './drain-back.js';
import { sectionAt } from './manning.js';
import type { StreamBed } from './stream-bed.js';
import { STONE_RATIO } from './stone-roughness.js';
import type { StreamState } from './stream-state.js';

interface DrainBackLines {
  readonly deepest: number;
  readonly back: DrainBack | null;
  readonly basin: Basin | null;
}

/** How a stream's figures came about, all in SI. */
export function streamWorking(bed: StreamBed, states: { wanted: StreamState | null; withPump: StreamState | null }, { deepest, back, basin }: DrainBackLines): Working {
  const { input, channel } = bed;
  const { bottomWidthM, sideSlope, lengthM, fallM, lining, stoneSizeM } = input;
  return {
    rule: 'Q = A × R^(2/3) × √S / n (Manning, SI), R = A / wetted perimeter',
    inputs: [
      given('bottom width', bottomWidthM, 'm'),
      given('side slope, horizontal to 1 up', sideSlope),
      given('length', lengthM, 'm'),
      given('fall', fallM, 'm'),
      { name: 'lining', value: lining },
      ...(stoneSizeM === null ? [] : [given('median stone', stoneSizeM, 'm')]),
    ],
    steps: [
      step('bed slope S', `${plain(fallM)} / ${plain(lengthM)}`, channel.bedSlope),
      ...stateSteps('as wanted', states.wanted, bed),
      ...stateSteps('with the pump', states.withPump, bed),
      ...drainBackSteps(),
    ],
  };

  function drainBackSteps(): WorkingStep[] {
    if (back === null) return [];
    const section = sectionAt(channel, deepest).areaM2;
    return [
      step('section when the water stands highest', `(${plain(bottomWidthM)} + ${plain(sideSlope)} × ${plain(deepest)}) × ${plain(deepest)}`, section, 'm2'),
      step('drains back', `${plain(lengthM)} × ${plain(section)}`, back.volumeM3, 'm3'),
      ...(back.riseM === null || basin === null ? [] : [step('rise of the basin', `${plain(back.volumeM3)} / ${plain(basin.surfaceM2)}`, back.riseM, 'm')]),
    ];
  }
}

function stateSteps(name: string, state: StreamState | null, { input, channel }: StreamBed): WorkingStep[] {
  if (state === null) return [];
  const { flow, depthM, section, meanDepthM, roughness, velocity, froude } = state;
  const { stoneSizeM } = input;
  const [width, side, depth] = [input.bottomWidthM, input.sideSlope, depthM].map(plain);
  const [area, wetted] = [section.areaM2, section.wettedM].map(plain);
  return [
    step(`depth ${name}`, 'as asked, or that at which A × R^(2/3) × √S / n is the flow', depthM, 'm'),
    step(`section A ${name}`, `(${width} + ${side} × ${depth}) × ${depth}`, section.areaM2, 'm2'),
    step(`wetted perimeter ${name}`, `${width} + 2 × ${depth} × √(1 + ${side}²)`, section.wettedM, 'm'),
    step(`mean depth d ${name}`, `${area} / ${plain(section.topWidthM)}`, meanDepthM, 'm'),
    step(`roughness n ${name}`, stoneSizeM === null ? 'usual for the lining' : `0.319 d^(1/6) / (2.25 + 5.23 log10(d / ${plain(stoneSizeM)})), d = ${plain(Math.max(meanDepthM, STONE_RATIO.least * stoneSizeM))}`, roughness),
    step(`flow ${name}`, `${area} × (${area} / ${wetted})^(2/3) × √${plain(channel.bedSlope)} / ${plain(roughness)}`, flow, 'm3/s'),
    step(`velocity ${name}`, `${plain(flow)} / ${area}`, velocity, 'm/s'),
    step(`Froude number ${name}`, `${plain(velocity)} / √(${GRAVITY} × ${plain(meanDepthM)})`, froude),
  ];
}
