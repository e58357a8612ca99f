/** A stone edge where nothing else is said: 1 ft high and thick, rock of 165 lb/ft3, 30 % of gaps. Common practice. */
export const USUAL_EDGE = { heightM: 0.3048, thicknessM: 0.3048, densityKgPerM3: 2643, voidFraction: 0.3 } as const;
