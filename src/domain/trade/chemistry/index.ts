export { SEA_LEVEL_MMHG, standardPressureMmHg } from './air-pressure.js';
export { oxygenCautions, oxygenSaturation, type OxygenSaturation } from './oxygen-saturation.js';
export { AMMONIA_BASES, AMMONIA_LEVELS, AMMONIA_LIMITS_MG_PER_L, unionizedAmmonia, type AmmoniaBasis, type AmmoniaLevel, type UnionizedAmmonia } from './un-ionized-ammonia.js';
export { concentrationDose, type Dose } from './concentration-dose.js';
export { DECHLORINATORS, dechlorinationRatio, THIOSULFATE_REACTIONS, type Dechlorinator, type ThiosulfateReaction } from './dechlorinators.js';
export { dechlorination, type Dechlorination, type DechlorinationInput } from './dechlorination.js';
export { saltDose } from './salt-dose.js';
export { volumeFromSalt, type VolumeFromSalt } from './volume-from-salt.js';
export { ALKALINITY_FORMS, alkalinityDose, type AlkalinityDose, type AlkalinityForm, type AlkalinityInput } from './alkalinity-dose.js';
