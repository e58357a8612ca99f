import { Module, type OnModuleInit } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { DevicesModule, RevokeDevice } from '../devices/index.js';
import { CalendarFeedEntity } from './calendar-feed.entity.js';
import { CalendarFeedsController } from './calendar-feeds.controller.js';
import { CalendarFeedsService } from './calendar-feeds.service.js';
import { CalendarController } from './calendar.controller.js';
import { CalendarRepository } from './calendar.repository.js';
import { ReadCalendar } from './read-calendar.js';

@Module({
  imports: [TypeOrmModule.forFeature([CalendarFeedEntity]), DevicesModule],
  controllers: [CalendarFeedsController, CalendarController],
  providers: [CalendarFeedsService, CalendarRepository, ReadCalendar],
})
export class CalendarModule implements OnModuleInit {
  constructor(
    private readonly devices: RevokeDevice,
    private readonly feeds: CalendarFeedsService,
  ) {}

  /** Whoever finds a lost phone finds the address of the feed on it. */
  onModuleInit(): void {
    this.devices.whenRevoked((actor, deviceId) => this.feeds.revokeAllOfDevice(actor, deviceId));
  }
}
