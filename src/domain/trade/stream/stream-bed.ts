import { DomainError } from '../../errors.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { LININGS, type Lining } from './linings.js';
import type { Channel, Roughness } from './manning.js';
import { stoneRoughness } from './stone-roughness.js';

/** A stream as it is taped. */
export interface StreamBedInput {
  readonly bottomWidthM: number;
  /** Horizontal for each 1 up, 0 to 10; 0 for upright sides. */
  readonly sideSlope: number;
  readonly lengthM: number;
  /** From the head of the stream down to its end, without the drops of waterfalls in it. */
  readonly fallM: number;
  readonly lining: Lining;
  /** The median stone of a loose bed; null to take n from the table. */
  readonly stoneSizeM: number | null;
}

export interface StreamBed {
  readonly input: StreamBedInput;
  readonly channel: Channel;
  readonly usual: Roughness;
  /** The table's bounds; null where n follows from the stone, for which no bounds are published. */
  readonly bounds: { readonly least: Roughness; readonly most: Roughness } | null;
}

/** @throws DomainError at /bottomWidth, /sideSlope, /length, /fall or /stoneSize */
export function streamBed(input: StreamBedInput): StreamBed {
  const { bottomWidthM, sideSlope, lengthM, fallM, lining, stoneSizeM } = input;
  requirePositive('/bottomWidth', bottomWidthM);
  requireWithin('/sideSlope', sideSlope, 0, 10, 'to 1');
  requirePositive('/length', lengthM);
  requirePositive('/fall', fallM);
  if (fallM >= lengthM) throw DomainError.at('/fall', 'The stream falls as much as it is long: that is a waterfall. Give the fall without its drops.');
  const { least, usual, most, usualStoneM } = LININGS[lining];
  const channel = { bottomWidthM, sideSlope, bedSlope: fallM / lengthM };
  if (stoneSizeM === null) return { input, channel, usual: () => usual, bounds: { least: () => least, most: () => most } };
  if (usualStoneM === null) throw DomainError.at('/stoneSize', 'Stones set in mortar have the roughness of their joints, not of their size; leave this out.');
  requirePositive('/stoneSize', stoneSizeM);
  return { input, channel, usual: (meanDepthM) => stoneRoughness(meanDepthM, stoneSizeM), bounds: null };
}
