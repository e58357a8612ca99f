import { displayUnit, fromSi, type Quantity, toSi, type UnitSystem } from '../../../domain/quantity/index.js';
import type { Takeoff } from '../../../domain/trade/index.js';
import type { DepthFiguresView, DepthTotalView } from './totals.dto.js';
import type { DepthSums } from './totals.repository.js';

/** The depths that the quote was made from, and where they were measured. */
export interface Surveyed {
  readonly featureId: string;
  readonly readings: number;
  readonly takeoff: Pick<Takeoff, 'meanDepthM' | 'maxDepthM' | 'sedimentMeanThicknessM'>;
}

/** The means of what was found at each feature, over all units, beside what was surveyed there. */
export function sumDepths(sums: readonly DepthSums[], surveyed: Surveyed | null, units: UnitSystem): DepthTotalView[] {
  const shown = (metres: number | null): Quantity | null => {
    const unit = displayUnit('depth', units);
    return metres === null ? null : { value: fromSi(metres, unit), unit };
  };
  const found = (ofFeature: readonly DepthSums[]): DepthFiguresView => {
    const readings = ofFeature.reduce((sum, one) => sum + one.readings, 0);
    const depth = ofFeature.reduce((sum, { bottom }) => sum + toSi({ value: bottom.sum, unit: bottom.unit }), 0);
    const deepest = Math.max(...ofFeature.map(({ bottom }) => toSi({ value: bottom.greatest, unit: bottom.unit })));
    const thickness = ofFeature.reduce((sum, one) => sum + thicknessOf(one), 0);
    return { readings, meanDepth: shown(depth / readings), maxDepth: shown(deepest), sedimentMeanThickness: shown(thickness / readings) };
  };
  return [...new Set(sums.map(({ featureId }) => featureId))].map((featureId) => ({
    featureId,
    found: found(sums.filter((one) => one.featureId === featureId)),
    surveyed: surveyed?.featureId !== featureId ? null : {
      readings: surveyed.readings,
      meanDepth: shown(surveyed.takeoff.meanDepthM),
      maxDepth: shown(surveyed.takeoff.maxDepthM),
      sedimentMeanThickness: shown(surveyed.takeoff.sedimentMeanThicknessM),
    },
  }));
}

/** All of its readings together, in m; none where the rod met no sediment. */
function thicknessOf({ bottom, sediment }: DepthSums): number {
  if (sediment.unit === null) return 0;
  return toSi({ value: bottom.sum, unit: bottom.unit }) - toSi({ value: sediment.sum, unit: sediment.unit });
}
