export { AttachmentsModule } from './attachments.module.js';
export { AttachmentsService } from './attachments.service.js';
export { EquipmentAttachments } from './equipment-attachments.js';
