export { boulderWeight, STONE_FORMS, type BoulderWeight, type StoneForm } from './boulder-weight.js';
