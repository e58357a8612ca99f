import type { EdgeBands } from '../locate.js';
import type { Layers } from './edge-rule.js';
import type { Mesh } from './mesh.js';
import type { GridPoint } from './point-grid.js';

/** The triangles of a pond, whatever stands at its corners. */
export interface Cover {
  readonly triangles: number;
  /** In threes, and the area of each triangle; m2. */
  readonly corners: Uint32Array;
  readonly areas: Float64Array;
  /** Triangles between spits and bays, on land. */
  readonly leftOut: number;
  readonly areaM2: number;
  /** Of the triangles that no reading is a corner of. */
  readonly unreadAreaM2: number;
}

/** What the triangles inside the outline hold. */
export interface Triangulated {
  readonly triangles: number;
  readonly leftOut: number;
  readonly areaM2: number;
  readonly unreadAreaM2: number;
  readonly sedimentM3: number;
  /** From the full-water line to the hard bottom. */
  readonly toBottomM3: number;
}

/**
 * The triangles whose middle lies inside the outline.
 * @param edges of the outline, metres
 */
export function coverOf(edges: EdgeBands, { shore, inside, corners, alongShore }: Mesh): Cover {
  const points: GridPoint[] = [...shore, ...inside];
  const kept = { corners: new Uint32Array(corners.length), areas: new Float64Array(corners.length / 3) };
  let triangles = 0;
  const sum = { areaM2: 0, unreadAreaM2: 0 };
  for (let t = 0; t < corners.length; t += 3) {
    const [i, j, k] = [corners[t] as number, corners[t + 1] as number, corners[t + 2] as number];
    const [a, b, c] = [points[i] as GridPoint, points[j] as GridPoint, points[k] as GridPoint];
    const reading = i >= shore.length || j >= shore.length || k >= shore.length;
    // Where no triangle reaches across the shore, one with a reading inside lies inside: most need no test.
    if (!(reading && alongShore) && !edges.contains((a.x + b.x + c.x) / 3, (a.y + b.y + c.y) / 3)) continue;
    const areaM2 = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    kept.corners[3 * triangles] = i;
    kept.corners[3 * triangles + 1] = j;
    kept.corners[3 * triangles + 2] = k;
    kept.areas[triangles] = areaM2;
    triangles += 1;
    sum.areaM2 += areaM2;
    if (!reading && [i, j, k].every((corner) => shore[corner]?.reading === null)) sum.unreadAreaM2 += areaM2;
  }
  return { triangles, ...kept, leftOut: corners.length / 3 - triangles, ...sum };
}

/**
 * The volume under a surface that runs straight between neighboring points: each triangle holds its area times the mean
 * of its three corners (a truncated prism, exact).
 * @param layers at each point of the mesh, the shore first
 */
export function volumesOf({ triangles, corners, areas, leftOut, areaM2, unreadAreaM2 }: Cover, { thicknessM, depthM }: Layers): Triangulated {
  let sedimentM3 = 0;
  let toBottomM3 = 0;
  for (let t = 0; t < triangles; t += 1) {
    const [i, j, k] = [corners[3 * t] as number, corners[3 * t + 1] as number, corners[3 * t + 2] as number];
    const area = areas[t] as number;
    sedimentM3 += (area * ((thicknessM[i] as number) + (thicknessM[j] as number) + (thicknessM[k] as number))) / 3;
    toBottomM3 += (area * ((depthM[i] as number) + (depthM[j] as number) + (depthM[k] as number))) / 3;
  }
  return { triangles, leftOut, areaM2, unreadAreaM2, sedimentM3, toBottomM3 };
}
