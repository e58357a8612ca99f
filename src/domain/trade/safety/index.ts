export { barrierCautions } from './barrier.js';
export type { Caution, Checked } from './caution.js';
export { DISCHARGE_PLACES, dischargeCautions, type DischargeInput, type DischargeTo } from './discharge.js';
export { electricalCautions, type ElectricalInput } from './electrical.js';
export { COUPLINGS, LIFT_DURATIONS, type Coupling, type LiftDuration } from './lift-tables.js';
export { liftCheck, type HandPosition, type LiftCheck, type LiftInput } from './lifting.js';
export { SOILS, trenchCautions, type Soil, type TrenchCheck, type TrenchInput } from './trench.js';
export { waterSupplyCautions, type WaterSupplyInput } from './water-supply.js';
