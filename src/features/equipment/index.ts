export { EquipmentModule } from './equipment.module.js';
