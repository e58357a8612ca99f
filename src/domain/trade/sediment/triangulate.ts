import { edgesByHeight, oddCrossings } from '../locate.js';
import type { Point } from '../outline.js';
import type { Layer } from './edge-rule.js';
import type { Mesh } from './mesh.js';
import type { GridPoint } from './point-grid.js';

/** The triangles of a pond, whatever stands at its corners. */
export interface Cover {
  readonly triangles: readonly { readonly corners: readonly [number, number, number]; readonly areaM2: number }[];
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
 * @param outline metres
 */
export function coverOf(outline: readonly Point[], { shore, inside, corners }: Mesh): Cover {
  const points: GridPoint[] = [...shore, ...inside];
  const read = [...shore.map(({ reading }) => reading !== null), ...inside.map(() => true)];
  const edgesAt = edgesByHeight(outline, 0);
  const triangles: { corners: [number, number, number]; areaM2: number }[] = [];
  const sum = { leftOut: 0, areaM2: 0, unreadAreaM2: 0 };
  for (let t = 0; t < corners.length; t += 3) {
    const [i, j, k] = [corners[t] as number, corners[t + 1] as number, corners[t + 2] as number];
    const [a, b, c] = [points[i] as GridPoint, points[j] as GridPoint, points[k] as GridPoint];
    const middleY = (a.y + b.y + c.y) / 3;
    if (!oddCrossings((a.x + b.x + c.x) / 3, middleY, edgesAt(middleY))) {
      sum.leftOut += 1;
      continue;
    }
    const areaM2 = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    triangles.push({ corners: [i, j, k], areaM2 });
    sum.areaM2 += areaM2;
    if (!read[i] && !read[j] && !read[k]) sum.unreadAreaM2 += areaM2;
  }
  return { triangles, ...sum };
}

/**
 * The volume under a surface that runs straight between neighboring points: each triangle holds its area times the mean
 * of its three corners (a truncated prism, exact).
 * @param layers at each point of the mesh, the shore first
 */
export function volumesOf({ triangles, leftOut, areaM2, unreadAreaM2 }: Cover, layers: readonly Layer[]): Triangulated {
  let sedimentM3 = 0;
  let toBottomM3 = 0;
  for (const { corners, areaM2: area } of triangles) {
    const [p, q, r] = [layers[corners[0]] as Layer, layers[corners[1]] as Layer, layers[corners[2]] as Layer];
    sedimentM3 += (area * (p.thicknessM + q.thicknessM + r.thicknessM)) / 3;
    toBottomM3 += (area * (p.depthM + q.depthM + r.depthM)) / 3;
  }
  return { triangles: triangles.length, leftOut, areaM2, unreadAreaM2, sedimentM3, toBottomM3 };
}
