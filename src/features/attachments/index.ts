export { AttachmentsModule } from './attachments.module.js';
export { AttachBytes } from './attach-bytes.js';
export { AttachmentsService } from './attachments.service.js';
export { EquipmentAttachments } from './equipment-attachments.js';
