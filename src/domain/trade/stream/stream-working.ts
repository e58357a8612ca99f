import { plain } from '../../decimal.js';
import type { Working, WorkingStep } from '../../working.js';
import { GRAVITY } from '../hydraulics/water.js';
import { given, step } from '../working-lines.js';
import type { Basin, DrainBack } from './drain-back.js';
import { sectionAt } from './manning.js';
import type { StreamBed } from './stream-bed.js';
import type { StreamState } from './stream-state.js';

interface DrainBackLines {
  readonly deepest: number;
  readonly back: DrainBack | null;
  readonly basin: Basin | null;
}

/** How a stream's figures came about, all in SI. */
export function streamWorking({ input, channel }: StreamBed, states: { wanted: StreamState | null; withPump: StreamState | null }, { deepest, back, basin }: DrainBackLines): Working {
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
      ...stateSteps('as wanted', states.wanted, input.stoneSizeM),
      ...stateSteps('with the pump', states.withPump, input.stoneSizeM),
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

function stateSteps(name: string, state: StreamState | null, stoneSizeM: number | null): WorkingStep[] {
  if (state === null) return [];
  const { flow, depthM, section, meanDepthM, roughness, velocity, froude } = state;
  const area = plain(section.areaM2);
  return [
    step(`depth ${name}`, 'the depth at which A × R^(2/3) × √S / n is the flow', depthM, 'm'),
    step(`section A ${name}`, `bottom and sides at ${plain(depthM)}`, section.areaM2, 'm2'),
    step(`hydraulic radius R ${name}`, `${area} / ${plain(section.wettedM)}`, section.areaM2 / section.wettedM, 'm'),
    step(`roughness n ${name}`, stoneSizeM === null ? 'usual for the lining' : `0.319 d^(1/6) / (2.25 + 5.23 log10(d / ${plain(stoneSizeM)})), d = ${plain(meanDepthM)} or 1.5 stones`, roughness),
    step(`flow ${name}`, `${area} × (${area} / ${plain(section.wettedM)})^(2/3) × √S / ${plain(roughness)}`, flow, 'm3/s'),
    step(`velocity ${name}`, `${plain(flow)} / ${area}`, velocity, 'm/s'),
    step(`Froude number ${name}`, `${plain(velocity)} / √(${GRAVITY} × ${area} / ${plain(section.topWidthM)})`, froude),
  ];
}
