/** Molar masses in g/mol. */
const CHLORINE = 70.906;
const THIOSULFATE = 158.1;
const THIOSULFATE_PENTAHYDRATE = 248.17;

/**
 * Moles of thiosulfate for each of chlorine, by what it ends as. The first is what laboratories dose for (7.0 mg of
 * pentahydrate for each mg, read in a laboratory note) and by far the largest; the others need less but depend on pH.
 */
const MOLES = { tetrathionate: 2, 'sulfate-and-sulfur': 1, sulfate: 1 / 4 } as const;
export type ThiosulfateReaction = keyof typeof MOLES;
export const THIOSULFATE_REACTIONS = Object.keys(MOLES) as ThiosulfateReaction[];

/** mg of the pure substance for each mg of chlorine; thiosulfate by its reaction. */
const RATIOS = {
  'thiosulfate-pentahydrate': (reaction: ThiosulfateReaction) => (MOLES[reaction] * THIOSULFATE_PENTAHYDRATE) / CHLORINE,
  'thiosulfate-anhydrous': (reaction: ThiosulfateReaction) => (MOLES[reaction] * THIOSULFATE) / CHLORINE,
  'sodium-bisulfite': () => 1.61,
  'ascorbic-acid': () => 2.5,
} as const;
export type Dechlorinator = keyof typeof RATIOS;
export const DECHLORINATORS = Object.keys(RATIOS) as Dechlorinator[];

/**
 * mg of the pure substance that take away 1 mg of chlorine.
 * @see Disinfection of Pipelines and Storage Facilities field guide, Table 7-2, for bisulfite and ascorbic acid (field results near pH 7)
 */
export function dechlorinationRatio(form: Dechlorinator, reaction: ThiosulfateReaction): number {
  return RATIOS[form](reaction);
}

/** Whether the form is a thiosulfate, whose ratio depends on the reaction. */
export function isThiosulfate(form: Dechlorinator): boolean {
  return form.startsWith('thiosulfate');
}

/** mg of ammonia nitrogen that each mg of chlorine in monochloramine leaves behind: 14.007 / 70.906. */
export const NITROGEN_LEFT_PER_CHLORINE = 14.007 / CHLORINE;
