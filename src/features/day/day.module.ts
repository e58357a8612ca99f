import { Module } from '@nestjs/common';
import { CompaniesModule } from '../companies/index.js';
import { DayController } from './day.controller.js';
import { DayRepository } from './day.repository.js';
import { DayService } from './day.service.js';

@Module({ imports: [CompaniesModule], controllers: [DayController], providers: [DayRepository, DayService] })
export class DayModule {}
