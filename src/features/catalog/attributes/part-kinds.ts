/** What a part is for a design. The words are the trade's. */
export const PART_KINDS = [
  'pump', 'pipe', 'fitting', 'liner', 'underlayment', 'skimmer', 'filter', 'spillway', 'doser', 'stone', 'gravel', 'plant', 'fish', 'other',
] as const;

export type PartKind = (typeof PART_KINDS)[number];
