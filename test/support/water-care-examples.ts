/** A good input for every calculation of filters, doses and life in the water, by its name. */
export const WATER_CARE_EXAMPLES: Readonly<Record<string, object>> = {
  'biological-filter': { fish: { value: 20, unit: 'lb' }, feedPercentPerDay: 1, proteinPercent: 35, nitrificationGPerM2Day: 0.3, specificSurfaceM2PerM3: 200, ammoniaLimitMgPerL: 1, removalPercent: 50, mediaArea: { value: 90, unit: 'ft2' }, flow: { value: 50, unit: 'gpm' } },
  'filter-flow': { flow: { value: 3000, unit: 'gph' }, volume: { value: 2700, unit: 'gal' }, items: [{ name: 'skimmer', leastFlow: { value: 1500, unit: 'gph' }, mostFlow: { value: 5000, unit: 'gph' } }, { name: 'filter', count: 2, mostFlow: { value: 2000, unit: 'gph' } }] },
  'doser-setting': { basinVolume: { value: 5264, unit: 'gal' }, displacedVolume: { value: 600, unit: 'gal' }, besidesVolume: { value: 80, unit: 'gal' }, settingStep: { value: 500, unit: 'gal' }, dose: { value: 0.012, unit: 'L' }, doseFor: { value: 1000, unit: 'gal' }, everyDays: 1, reservoir: { value: 2, unit: 'L' } },
  'concentration-dose': { volume: { value: 1000, unit: 'gal' }, mgPerL: 1, activePercent: 50 },
  'dechlorination-dose': { addedVolume: { value: 1000, unit: 'gal' }, chlorineMgPerL: 1, disinfectant: 'chloramine', form: 'thiosulfate-pentahydrate', reaction: 'tetrathionate', activePercent: 100 },
  'salt-dose': { volume: { value: 1000, unit: 'gal' }, presentPpt: 0, targetPpt: 1 },
  'volume-from-salt': { salt: { value: 10, unit: 'lb' }, beforePpt: 0.1, afterPpt: 1.1, errorPpt: 0.05 },
  'alkalinity-dose': { volume: { value: 1000, unit: 'gal' }, presentMgPerL: 60, targetMgPerL: 100, form: 'sodium-bicarbonate', activePercent: 100, mostPerDayMgPerL: 25 },
  'oxygen-saturation': { temperature: { value: 68, unit: 'degF' }, altitude: { value: 1000, unit: 'ft' }, measuredMgPerL: 6 },
  'un-ionized-ammonia': { totalMgPerL: 1, basis: 'nitrogen', pH: 8, temperature: { value: 24, unit: 'degC' } },
  'fish-load': { fish: { value: 20, unit: 'lb' }, volume: { value: 2700, unit: 'gal' }, surface: { value: 200, unit: 'ft2' }, feedPercentPerDay: 1, proteinPercent: 35, aerated: false, mediaArea: { value: 105, unit: 'ft2' }, nitrificationGPerM2Day: 0.3 },
  'fish-season': { species: 'yellow-perch', periods: [{ label: 'January', temperature: { value: 39, unit: 'degF' } }, { label: 'July', temperature: { value: 75, unit: 'degF' } }] },
  'mosquito-breeding': { temperature: { value: 75, unit: 'degF' }, volume: { value: 2700, unit: 'gal' }, flow: { value: 3000, unit: 'gph' }, zones: [{ name: 'basin', area: { value: 200, unit: 'ft2' }, moving: true, fish: true }, { name: 'bog filter', area: { value: 30, unit: 'ft2' }, choked: true }] },
};
