import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { PartCostEntity } from './part-cost.entity.js';
import { PartCostsRepository } from './part-costs.repository.js';
import { PartEntity } from './part.entity.js';
import { PartsController } from './parts.controller.js';
import { PartsService } from './parts.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([PartEntity, PartCostEntity]), CompaniesModule],
  controllers: [PartsController],
  providers: [PartsService, PartCostsRepository],
  exports: [PartsService],
})
export class PartsModule {}
