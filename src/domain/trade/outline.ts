import type { Quantity, Unit } from '../quantity/index.js';

export type Point = readonly [x: number, y: number];

/** Length and width are the full axes, never the semi-axes. */
export interface BoxOutline {
  readonly shape: 'rectangle' | 'ellipse';
  readonly length: Quantity;
  readonly width: Quantity;
}

/** The edge points in walking order, either way round; a list closed with its first point means the same. */
export interface PolygonOutline {
  readonly shape: 'polygon';
  readonly unit: Unit;
  readonly points: readonly Point[];
}

/**
 * Tape distances from stake A at (0, 0) and stake B at (baseline, 0) to each edge point in walking order. All edge
 * points lie on the same side of the baseline, which the distances alone cannot tell.
 */
export interface TwoStakeOutline {
  readonly shape: 'two-stake';
  readonly unit: Unit;
  readonly baseline: number;
  readonly ranges: readonly (readonly [a: number, b: number])[];
}

/** Area and perimeter taken elsewhere, for instance from an aerial plan. */
export interface MeasuredOutline {
  readonly shape: 'measured';
  readonly area: Quantity;
  readonly perimeter: Quantity;
}

export type Outline = BoxOutline | PolygonOutline | TwoStakeOutline | MeasuredOutline;

export const OUTLINE_SHAPES: readonly Outline['shape'][] = ['rectangle', 'ellipse', 'polygon', 'two-stake', 'measured'];

/** No garden pond is wider; a larger figure is a wrong unit or a slipped decimal point. Metres. */
export const MAX_LENGTH_M = 10_000;
/** No tape reads less; below it, areas come out as nothing. Metres. */
export const MIN_LENGTH_M = 0.001;
/** Bounds the crossing search, which is quadratic for the worst of outlines. */
export const MAX_OUTLINE_POINTS = 2_000;
