import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { EquipmentModule } from '../equipment/index.js';
import { SurveyEntity } from './survey.entity.js';
import { SurveysController } from './surveys.controller.js';
import { SurveysRepository } from './surveys.repository.js';
import { SurveysService } from './surveys.service.js';
import { TakeoffController } from './takeoff.controller.js';

@Module({
  imports: [TypeOrmModule.forFeature([SurveyEntity]), CompaniesModule, EquipmentModule],
  controllers: [SurveysController, TakeoffController],
  providers: [SurveysRepository, SurveysService],
  exports: [SurveysService],
})
export class SurveysModule {}
