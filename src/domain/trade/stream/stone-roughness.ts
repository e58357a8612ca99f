/** Mean depths over stone size for which the formula is stated. */
export const STONE_RATIO = { least: 1.5, most: 185 } as const;

/**
 * Manning's n of a bed of loose stone by the mean depth of the water over it: 0.319 d^(1/6) / (2.25 + 5.23 log10(d / D)),
 * in m. The shallower the water, the more each stone holds it back, so that a table value is too smooth there.
 *
 * Under 1.5 stones of water the formula's denominator runs out; there n stays what it is at 1.5, which is too smooth still.
 * @param meanDepthM section over top width, above 0; stated for 1.5 to 185 times the stone
 * @param stoneM the median stone, above 0
 * @see Blodgett 1986, US Geological Survey WRI 86-4127, as in the open-channel chapter of a state highway design guide (read)
 */
export function stoneRoughness(meanDepthM: number, stoneM: number): number {
  const depth = Math.max(meanDepthM, STONE_RATIO.least * stoneM);
  return (0.319 * depth ** (1 / 6)) / (2.25 + 5.23 * Math.log10(depth / stoneM));
}
