export { EquipmentModule } from './equipment.module.js';
export { EquipmentService } from './equipment.service.js';
export type { EquipmentBody } from './equipment.dto.js';
