import { edgesByHeight, oddCrossings } from '../locate.js';
import type { Point } from '../outline.js';
import type { Layer } from './edge-rule.js';
import type { Mesh } from './mesh.js';
import type { GridPoint } from './point-grid.js';

/** What the triangles inside the outline hold. */
export interface Triangulated {
  readonly triangles: number;
  /** Triangles between spits and bays, on land. */
  readonly leftOut: number;
  readonly areaM2: number;
  /** Of the triangles that no reading is a corner of. */
  readonly unreadAreaM2: number;
  readonly sedimentM3: number;
  /** From the full-water line to the hard bottom. */
  readonly toBottomM3: number;
}

/**
 * The volume under a surface that runs straight between neighboring points: each triangle holds its area times the mean
 * of its three corners (a truncated prism, exact). Triangles whose middle lies outside the outline are left out.
 * @param outline metres
 * @param layers at each point of the mesh, the shore first
 */
export function triangulate(outline: readonly Point[], { shore, inside, corners }: Mesh, layers: readonly Layer[]): Triangulated {
  const points: GridPoint[] = [...shore, ...inside];
  const read = [...shore.map(({ reading }) => reading !== null), ...inside.map(() => true)];
  const edgesAt = edgesByHeight(outline, 0);
  const sum = { triangles: 0, leftOut: 0, areaM2: 0, unreadAreaM2: 0, sedimentM3: 0, toBottomM3: 0 };
  for (let t = 0; t < corners.length; t += 3) {
    const [i, j, k] = [corners[t] as number, corners[t + 1] as number, corners[t + 2] as number];
    const [a, b, c] = [points[i] as GridPoint, points[j] as GridPoint, points[k] as GridPoint];
    const middleY = (a.y + b.y + c.y) / 3;
    if (!oddCrossings((a.x + b.x + c.x) / 3, middleY, edgesAt(middleY))) {
      sum.leftOut += 1;
      continue;
    }
    const areaM2 = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    const [p, q, r] = [layers[i] as Layer, layers[j] as Layer, layers[k] as Layer];
    sum.triangles += 1;
    sum.areaM2 += areaM2;
    if (!read[i] && !read[j] && !read[k]) sum.unreadAreaM2 += areaM2;
    sum.sedimentM3 += (areaM2 * (p.thicknessM + q.thicknessM + r.thicknessM)) / 3;
    sum.toBottomM3 += (areaM2 * (p.depthM + q.depthM + r.depthM)) / 3;
  }
  return sum;
}
