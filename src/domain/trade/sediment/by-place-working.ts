import { plain } from '../../decimal.js';
import type { Working, WorkingStep } from '../../working.js';
import type { EdgeRule } from './edge-rule.js';
import type { Triangulated } from './triangulate.js';
import type { VolumeError } from './volume-error.js';

interface Parts {
  readonly areaM2: number;
  readonly thicknessM: number;
  readonly readings: number;
  readonly places: number;
  readonly edge: EdgeRule;
  readonly shorePoints: number;
  readonly triangulated: Triangulated;
  readonly mean: { readonly sedimentM3: number };
  readonly error: VolumeError | null;
}

/** The triangles are counted, not listed: there are thousands of them. */
export function placeWorking({ areaM2, thicknessM, readings, places, edge, shorePoints, triangulated, mean, error }: Parts): Working {
  const { triangles, sedimentM3, toBottomM3 } = triangulated;
  const spread: WorkingStep[] =
    error === null
      ? []
      : [
          { label: 'standard error of the volume by the mean', expression: `surface × standard deviation / √${readings}`, value: plain(error.standardErrorM3), unit: 'm3' },
          { label: 'half of its 90 % interval', expression: `${plain(error.t)} × ${plain(error.standardErrorM3)}`, value: plain(error.halfWidthM3), unit: 'm3' },
        ];
  return {
    rule: 'Sediment by place: the sum over the triangles (Delaunay) inside the outline of area × mean thickness at the three corners; beside it surface × mean thickness of all readings',
    inputs: [
      { name: 'surface area', value: plain(areaM2), unit: 'm2' },
      { name: 'readings', value: String(readings), unit: 'each' },
      { name: 'different places inside the outline', value: String(places), unit: 'each' },
      { name: 'points along the shore', value: String(shorePoints), unit: 'each', source: `edge: ${edge.kind}` },
      ...(edge.kind === 'given' ? [
        { name: 'thickness at the shore', value: plain(edge.thicknessM), unit: 'm' },
        { name: 'depth to the hard bottom at the shore', value: plain(edge.depthM), unit: 'm' },
      ] : []),
    ],
    steps: [
      { label: 'sediment by place', expression: `sum over ${triangles} triangles of area × (t1 + t2 + t3) / 3`, value: plain(sedimentM3), unit: 'm3' },
      { label: 'water by place, after clean-out', expression: `sum over ${triangles} triangles of area × (d1 + d2 + d3) / 3`, value: plain(toBottomM3), unit: 'm3' },
      { label: 'sediment by the mean', expression: `${plain(areaM2)} × ${plain(thicknessM)}`, value: plain(mean.sedimentM3), unit: 'm3' },
      ...spread,
    ],
  };
}
