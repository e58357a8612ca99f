/** Least thickness in clear water, mil (1/1000 in). EPDM from memory; the others were read. */
export const LEAST_MIL = { hdpe: 30, lldpe: 20, pvc: 20, epdm: 45 } as const;
export type LinerMaterial = keyof typeof LEAST_MIL;

/**
 * A warning when a liner is thinner than agricultural guidance asks for clear water; none is no approval.
 * @see NRCS practice standard 521A, Flexible Membrane (national draft), Table 1; EPDM 45 mil from memory
 */
export function thicknessWarnings(material: LinerMaterial, mil: number): string[] {
  const least = LEAST_MIL[material];
  return mil < least ? [`${mil} mil is thinner than the ${least} mil of ${material.toUpperCase()} that NRCS 521A guidance names for clear water${material === 'epdm' ? ' (from memory)' : ''}.`] : [];
}
