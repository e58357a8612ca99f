import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CalendarFeedEntity } from './calendar-feed.entity.js';
import { CalendarFeedsController } from './calendar-feeds.controller.js';
import { CalendarFeedsService } from './calendar-feeds.service.js';
import { CalendarController } from './calendar.controller.js';
import { CalendarRepository } from './calendar.repository.js';
import { ReadCalendar } from './read-calendar.js';

@Module({
  imports: [TypeOrmModule.forFeature([CalendarFeedEntity])],
  controllers: [CalendarFeedsController, CalendarController],
  providers: [CalendarFeedsService, CalendarRepository, ReadCalendar],
})
export class CalendarModule {}
