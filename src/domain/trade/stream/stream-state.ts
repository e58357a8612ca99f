import { within } from '../../errors.js';
import { GRAVITY, waterViscosity } from '../hydraulics/water.js';
import { normalDepth, sectionAt, type Section } from './manning.js';
import type { StreamBed } from './stream-bed.js';

export const FLOW_REGIMES = ['subcritical', 'near-critical', 'supercritical'] as const;
export type FlowRegime = (typeof FLOW_REGIMES)[number];

/** A stream that carries a flow evenly. Flow m3/s, lengths m, velocity m/s. */
export interface StreamState {
  readonly flow: number;
  readonly depthM: number;
  /** With the least and the most roughness of the lining; null where the stone's size gave the roughness. */
  readonly depthLeastM: number | null;
  readonly depthMostM: number | null;
  readonly section: Section;
  readonly meanDepthM: number;
  readonly roughness: number;
  readonly velocity: number;
  /** Velocity × hydraulic radius / viscosity; four times less than a pipe's. */
  readonly reynolds: number;
  readonly froude: number;
  readonly regime: FlowRegime;
}

/** Froude numbers between which waves stand and the depth is unsteady (common practice). */
const NEAR_CRITICAL = { from: 0.8, to: 1.2 } as const;
const VISCOSITY = waterViscosity(15);

/**
 * @param knownDepthM where the depth was asked for and the flow follows from it; null to find it
 * @throws DomainError at `pointer` when the flow would stand over 5 m deep, if only with the most roughness
 */
export function streamState(bed: StreamBed, flow: number, knownDepthM: number | null, pointer: string): StreamState {
  const depthAt = (roughness: StreamBed['usual']): number => within(pointer, () => normalDepth(bed.channel, roughness, flow));
  const depthM = knownDepthM ?? depthAt(bed.usual);
  const section = sectionAt(bed.channel, depthM);
  const meanDepthM = section.areaM2 / section.topWidthM;
  const velocity = flow / section.areaM2;
  const froude = velocity / Math.sqrt(GRAVITY * meanDepthM);
  return {
    flow,
    depthM,
    depthLeastM: bed.bounds && depthAt(bed.bounds.least),
    depthMostM: bed.bounds && depthAt(bed.bounds.most),
    section,
    meanDepthM,
    roughness: bed.usual(meanDepthM),
    velocity,
    reynolds: (velocity * section.areaM2) / section.wettedM / VISCOSITY,
    froude,
    regime: froude < NEAR_CRITICAL.from ? 'subcritical' : froude > NEAR_CRITICAL.to ? 'supercritical' : 'near-critical',
  };
}
