import { orient2d } from 'robust-predicates';
import { DomainError } from '../errors.js';
import { findCrossing } from './crossing.js';
import { next } from './polygon.js';
import type { Point } from './outline.js';

/**
 * Refuses an edge that is no simple polygon; the shoelace formula would cancel its loops against each other and
 * price too small a pond without a word.
 * @param points without a closing point
 * @param list name of the list in pointers, "points" or "ranges"
 * @throws DomainError at /list (too few) or /list/i, the point whose edge repeats, folds back, touches or crosses
 */
export function requireSimple(points: readonly Point[], list: string): void {
  points.forEach((point, i) => {
    const before = points[i - 1];
    if (before !== undefined && same(before, point)) {
      throw DomainError.at(`/${list}/${i}`, `Point ${i} repeats the one before it; leave one out.`);
    }
  });
  if (points.length < 3) throw DomainError.at(`/${list}`, 'An outline needs at least 3 different points.');
  points.forEach((point, i) => {
    const before = points[(i + points.length - 1) % points.length] as Point;
    if (foldsBack(before, point, next(points, i))) {
      throw DomainError.at(`/${list}/${i}`, `The outline turns back on itself at point ${i}; check its order.`);
    }
  });
  const crossing = findCrossing(points);
  if (crossing === null) return;
  const at = Math.min(crossing.later + 1, points.length - 1);
  throw DomainError.at(
    `/${list}/${at}`,
    `The edge to point ${(crossing.later + 1) % points.length} meets the edge from point ${crossing.earlier} to point ${crossing.earlier + 1}; ` +
      'list the points in walking order around the feature.',
  );
}

export function same(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function foldsBack(a: Point, b: Point, c: Point): boolean {
  if (orient2d(a[0], a[1], b[0], b[1], c[0], c[1]) !== 0) return false;
  return (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
}
