import { DomainError, fields } from '../../../../domain/errors.js';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { parseOutline, parseProbes } from '../../../../domain/trade/index.js';
import { sedimentByPlace, type EdgeRule } from '../../../../domain/trade/sediment/index.js';
import { calculation } from '../../calculation.js';
import { figure } from './figures.js';
import { SedimentByPlaceBody, SedimentByPlaceView } from './sediment-by-place.dto.js';

export const SEDIMENT_BY_PLACE = calculation({
  name: 'sediment-by-place',
  title: 'Sediment and water from readings with their places',
  description: 'Triangles (Delaunay) between the readings and the shore, each with its area × the mean of its corners, beside surface area × mean of all readings. Neither is the right one: take them as bounds when they differ. The standard error takes the readings as random (survey sampling, s/√n), which is on the careful side for readings spread evenly. Probe a lined pond to the liner with a blunt rod, never to refusal with a sharp one.',
  input: SedimentByPlaceBody,
  output: SedimentByPlaceView,
  run: (input: SedimentByPlaceBody): SedimentByPlaceView => {
    const edge = edgeOf(input);
    const { outline, probes } = fields({ outline: () => parseOutline(input.outline), probes: () => parseProbes(input.probes) });
    const { areaM2, mean, triangulated, error, places, working, warnings } = sedimentByPlace(outline, probes, edge);
    return {
      sedimentByPlace: figure(triangulated.sedimentM3, 'yd3'),
      sedimentByMean: figure(mean.sedimentM3, 'yd3'),
      standardError: error && figure(error.standardErrorM3, 'yd3'),
      halfInterval: error && figure(error.halfWidthM3, 'yd3'),
      halfIntervalPercent: error?.halfWidthShare == null ? null : 100 * error.halfWidthShare,
      extraReadings: error?.extraReadings ?? null,
      waterByPlace: figure(triangulated.toBottomM3, 'gal'),
      waterNowByPlace: figure(triangulated.toBottomM3 - triangulated.sedimentM3, 'gal'),
      waterByMean: figure(mean.waterM3, 'gal'),
      surfaceArea: figure(areaM2, 'ft2'),
      coveredArea: figure(triangulated.areaM2, 'ft2'),
      triangles: triangulated.triangles,
      places,
      working,
      warnings,
    };
  },
});

/** @throws DomainError at /edgeThickness or /edgeDepth when they and the edge do not go together */
function edgeOf({ edge, edgeThickness, edgeDepth }: SedimentByPlaceBody): EdgeRule {
  if (edge !== 'given') {
    if (edgeThickness != null) throw DomainError.at('/edgeThickness', 'This goes with the edge "given" only.');
    if (edgeDepth != null) throw DomainError.at('/edgeDepth', 'This goes with the edge "given" only.');
    return { kind: edge };
  }
  const { edgeThickness: thicknessM, edgeDepth: depthM } = fields({ edgeThickness: () => needed(edgeThickness), edgeDepth: () => needed(edgeDepth) });
  if (depthM < thicknessM) throw DomainError.at('/edgeDepth', 'The hard bottom cannot lie above the sediment: the depth is at least the thickness.');
  return { kind: edge, thicknessM, depthM };
}

function needed(quantity: Quantity | null | undefined): number {
  if (quantity == null) throw DomainError.at('', 'The edge "given" needs it.');
  return toSi(quantity);
}
