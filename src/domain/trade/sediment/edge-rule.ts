import { DomainError } from '../../errors.js';
import type { Mesh, ShorePoint } from './mesh.js';
import type { Placed } from './place-readings.js';
import { boxOf, PointGrid } from './point-grid.js';

/**
 * What stands at the shore where no reading was taken. Nobody can know it from readings in the middle, and it moves the
 * volume by a third in a small pond, so it is chosen, never assumed.
 * - zero: sediment and water run out at the shore, as in a shelving pond
 * - nearest: both are as at the nearest reading, as in a pond with upright sides
 * - given: both are as measured or judged once, all around
 * - shore-readings: between the readings on the shore both change evenly along it
 */
export type EdgeRule =
  | { readonly kind: 'zero' | 'nearest' | 'shore-readings' }
  | { readonly kind: 'given'; readonly thicknessM: number; readonly depthM: number };

export const EDGE_KINDS = ['zero', 'nearest', 'given', 'shore-readings'] as const;

/** Sediment thickness and depth to the hard bottom at a point, metres. */
interface Layer {
  readonly thicknessM: number;
  readonly depthM: number;
}

/** The same at every point of a mesh, the shore first. */
export interface Layers {
  readonly thicknessM: Float64Array;
  readonly depthM: Float64Array;
}

function layerOf({ toSedimentM, toBottomM }: Placed): Layer {
  return { thicknessM: toBottomM - toSedimentM, depthM: toBottomM };
}

/**
 * The layers along the shore and at the readings inside; a reading stands at its own place whatever the rule.
 * @throws DomainError at "" when the rule goes by readings on the shore and there is none
 */
export function layersOf({ shore, inside }: Mesh, placed: readonly Placed[], rule: EdgeRule): Layers {
  const layers = { thicknessM: new Float64Array(shore.length + inside.length), depthM: new Float64Array(shore.length + inside.length) };
  layersAlong(shore, placed, rule).forEach(({ thicknessM, depthM }, i) => {
    layers.thicknessM[i] = thicknessM;
    layers.depthM[i] = depthM;
  });
  inside.forEach(({ toSedimentM, toBottomM }, i) => {
    layers.thicknessM[shore.length + i] = toBottomM - toSedimentM;
    layers.depthM[shore.length + i] = toBottomM;
  });
  return layers;
}

function layersAlong(shore: readonly ShorePoint[], placed: readonly Placed[], rule: EdgeRule): Layer[] {
  if (rule.kind === 'shore-readings') return between(shore);
  if (rule.kind === 'zero' || rule.kind === 'given') {
    const everywhere = rule.kind === 'given' ? { thicknessM: rule.thicknessM, depthM: rule.depthM } : { thicknessM: 0, depthM: 0 };
    return shore.map(({ reading }) => (reading === null ? everywhere : layerOf(reading)));
  }
  const grid = new PointGrid(placed, boxOf(shore));
  return shore.map(({ x, y, reading }) => layerOf(reading ?? (grid.nearest(x, y) as Placed)));
}

/** Evenly from one reading to the next along the shore, around the whole of it. */
function between(shore: readonly ShorePoint[]): Layer[] {
  const first = shore.findIndex(({ reading }) => reading !== null);
  if (first < 0) throw DomainError.at('', 'No reading lies on the shore (within 5 cm of the outline); take some there, or choose zero, nearest or given.');
  const turned = [...shore.slice(first), ...shore.slice(0, first + 1)];
  const layers: Layer[] = [];
  let run: number[] = [];
  let from = layerOf(turned[0]?.reading as Placed);
  let length = 0;
  turned.slice(1).forEach((point, i) => {
    const before = turned[i] as ShorePoint;
    run.push(length);
    length += Math.sqrt((point.x - before.x) ** 2 + (point.y - before.y) ** 2);
    if (point.reading === null) return;
    const to = layerOf(point.reading);
    for (const along of run) layers.push(mixed(from, to, along / length));
    [from, run, length] = [to, [], 0];
  });
  const back = shore.length - first;
  return [...layers.slice(back), ...layers.slice(0, back)];
}

function mixed(from: Layer, to: Layer, share: number): Layer {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  return { thicknessM: mix(from.thicknessM, to.thicknessM), depthM: mix(from.depthM, to.depthM) };
}
