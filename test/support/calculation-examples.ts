/** A good input for every calculation, by its name; the tests of all calculations walk over them. */
export const CALCULATION_EXAMPLES: Readonly<Record<string, object>> = {
  'boulder-weight': { length: { value: 24, unit: 'in' }, width: { value: 18, unit: 'in' }, height: { value: 12, unit: 'in' }, form: 'rounded' },
};
