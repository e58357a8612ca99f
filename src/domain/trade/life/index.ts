export { fishLoad, LOAD_MEASURES, type FishLoad, type FishLoadInput, type LoadLimit, type LoadMeasure } from './fish-load.js';
export { SPECIES, SPECIES_RANGES, type Species, type SpeciesRange } from './species.js';
export { FISH_STATES, fishSeason, stateAt, type FishSeason, type FishState, type WaterReading } from './fish-season.js';
export { DEVELOPMENT_BOUNDS_C, mosquitoDevelopmentDays } from './mosquito-development.js';
export { larvicideRings, whyItBreeds, type WaterZone } from './still-zones.js';
export { mosquitoBreeding, type MosquitoBreeding, type MosquitoInput } from './mosquito-breeding.js';
