/** What a part is for a design. The words are the trade's. */
export const PART_KINDS = ['pump', 'pipe', 'liner', 'underlayment', 'skimmer', 'filter', 'doser', 'stone', 'gravel', 'other'] as const;

export type PartKind = (typeof PART_KINDS)[number];
