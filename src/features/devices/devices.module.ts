import { Module, type OnModuleInit } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { PeopleModule, PeopleService } from '../people/index.js';
import { CodeLimits } from './code-limits.js';
import { DeviceEnrolmentEntity } from './device-enrolment.entity.js';
import { DeviceSessionsController } from './device-sessions.controller.js';
import { DeviceEntity } from './device.entity.js';
import { DevicesController } from './devices.controller.js';
import { DevicesRepository } from './devices.repository.js';
import { EnrolDevice } from './enrol-device.js';
import { EnrolmentsController } from './enrolments.controller.js';
import { EnrolmentsRepository } from './enrolments.repository.js';
import { MakeEnrolment } from './make-enrolment.js';
import { RenameDevice } from './rename-device.js';
import { RevokeDevice } from './revoke-device.js';
import { SignInDevice } from './sign-in-device.js';

@Module({
  imports: [TypeOrmModule.forFeature([DeviceEntity, DeviceEnrolmentEntity]), PeopleModule],
  controllers: [DevicesController, EnrolmentsController, DeviceSessionsController],
  providers: [DevicesRepository, EnrolmentsRepository, CodeLimits, MakeEnrolment, EnrolDevice, SignInDevice, RevokeDevice, RenameDevice],
  exports: [RevokeDevice],
})
export class DevicesModule implements OnModuleInit {
  constructor(
    private readonly people: PeopleService,
    private readonly revokeDevice: RevokeDevice,
  ) {}

  /** Somebody taken on again next season brings a phone that is enrolled anew: the old one may lie anywhere by then. */
  onModuleInit(): void {
    this.people.whenDismissed((actor, personId) => this.revokeDevice.executeForAllOf(actor, personId, 'the person was made inactive'));
  }
}
