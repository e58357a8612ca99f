import { DomainError } from '../../errors.js';

/** A straight bed of one section: a rectangle, or a trapezoid with both sides alike. */
export interface Channel {
  readonly bottomWidthM: number;
  /** Horizontal for each 1 up; 0 for upright sides. */
  readonly sideSlope: number;
  /** Fall over length. */
  readonly bedSlope: number;
}

/** Manning's n at a mean depth, m; most beds have the same at every depth. */
export type Roughness = (meanDepthM: number) => number;

export interface Section {
  readonly areaM2: number;
  readonly wettedM: number;
  readonly topWidthM: number;
}

/** No garden stream is deeper; beyond it a figure is a slip of the pen. */
export const MOST_DEPTH_M = 5;
/** Enough to find a depth to the last bits of a number. */
const HALVINGS = 80;

export function sectionAt({ bottomWidthM, sideSlope }: Channel, depthM: number): Section {
  return {
    areaM2: (bottomWidthM + sideSlope * depthM) * depthM,
    wettedM: bottomWidthM + 2 * depthM * Math.hypot(1, sideSlope),
    topWidthM: bottomWidthM + 2 * sideSlope * depthM,
  };
}

/**
 * Flow at a uniform depth: Q = A R^(2/3) S^(1/2) / n, m3/s.
 * @see Manning's formula in SI, as in any handbook of open-channel flow
 */
export function manningFlow(channel: Channel, roughness: Roughness, depthM: number): number {
  const { areaM2, wettedM, topWidthM } = sectionAt(channel, depthM);
  return (areaM2 * (areaM2 / wettedM) ** (2 / 3) * Math.sqrt(channel.bedSlope)) / roughness(areaM2 / topWidthM);
}

/**
 * The depth at which a flow (m3/s, above 0) runs evenly, m, by bisection: deeper always means more flow.
 * @throws DomainError at the root when the flow would stand deeper than 5 m
 */
export function normalDepth(channel: Channel, roughness: Roughness, flow: number): number {
  if (manningFlow(channel, roughness, MOST_DEPTH_M) < flow) throw DomainError.at('', 'The stream would run over 5 m deep; check the flow, the width and the fall.');
  let [low, high] = [0, MOST_DEPTH_M];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (manningFlow(channel, roughness, middle) < flow) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
