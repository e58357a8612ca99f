/** An area at a place on an axis: a contour at its depth, or a cross section at its distance. */
export interface Section {
  /** m, growing from one to the next */
  readonly atM: number;
  /** m2, 0 or more */
  readonly areaM2: number;
}
