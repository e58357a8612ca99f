import { convert } from '../../quantity/index.js';

/** For sentences: a flow in m3/s as "41.2 gpm". Figures keep their full precision elsewhere. */
export function shownFlow(flow: number): string {
  return `${convert(flow * 3600, 'm3/h', 'gpm').toFixed(1)} gpm`;
}

/** For sentences: a head or height in m as "12.3 ft". */
export function shownHead(metres: number): string {
  return `${convert(metres, 'm', 'ft').toFixed(1)} ft`;
}

/** For sentences: a velocity in m/s as "3.9 ft/s". */
export function shownVelocity(metresPerSecond: number): string {
  return `${convert(metresPerSecond, 'm', 'ft').toFixed(1)} ft/s`;
}
