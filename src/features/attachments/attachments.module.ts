import { Module, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyAdapter } from '@nestjs/platform-fastify';
import { TypeOrmModule } from '@nestjs/typeorm';
import { acceptStreamAt } from '../../platform/http/streamed-body.js';
import { CompaniesModule } from '../companies/index.js';
import { CostsModule } from '../costs/index.js';
import { EquipmentModule } from '../equipment/index.js';
import { FeaturesModule } from '../features/index.js';
import { JobsModule } from '../jobs/index.js';
import { AttachBytes } from './attach-bytes.js';
import { AttachFile } from './attach-file.js';
import { AttachmentEntity } from './attachment.entity.js';
import { AttachmentSubjects } from './attachment-subjects.js';
import { AttachmentsController } from './attachments.controller.js';
import { AttachmentsRepository } from './attachments.repository.js';
import { AttachmentsService } from './attachments.service.js';
import { EquipmentAttachments } from './equipment-attachments.js';
import { SyncAttachments } from './sync-attachments.js';
import { BeginUpload } from './uploads/begin-upload.js';
import { FinishUpload } from './uploads/finish-upload.js';
import { UploadEntity } from './uploads/upload.entity.js';
import { UploadExchange, UPLOADS_PATH } from './uploads/upload-exchange.js';
import { UploadPieceEntity } from './uploads/upload-piece.entity.js';
import { UploadsController } from './uploads/uploads.controller.js';
import { UploadsRepository } from './uploads/uploads.repository.js';

@Module({
  imports: [TypeOrmModule.forFeature([UploadEntity, UploadPieceEntity, AttachmentEntity]), CompaniesModule, JobsModule, FeaturesModule, EquipmentModule, CostsModule],
  controllers: [UploadsController, AttachmentsController],
  providers: [UploadsRepository, BeginUpload, FinishUpload, UploadExchange, AttachmentsRepository, AttachmentSubjects, AttachFile, AttachBytes, AttachmentsService, EquipmentAttachments, SyncAttachments],
  exports: [AttachBytes, AttachmentsService, EquipmentAttachments],
})
export class AttachmentsModule implements OnModuleInit {
  constructor(
    private readonly host: HttpAdapterHost<FastifyAdapter>,
    private readonly sync: SyncAttachments,
  ) {}

  onModuleInit(): void {
    acceptStreamAt(this.host.httpAdapter.getInstance(), 'application/offset+octet-stream', [UPLOADS_PATH, `${UPLOADS_PATH}/:id`]);
    this.sync.register();
  }
}
