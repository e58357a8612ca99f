import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { JobsModule } from '../jobs/index.js';
import { CostEntity } from './cost.entity.js';
import { CostsController } from './costs.controller.js';
import { CostsRepository } from './costs.repository.js';
import { CostsService } from './costs.service.js';

@Module({ imports: [TypeOrmModule.forFeature([CostEntity]), JobsModule], controllers: [CostsController], providers: [CostsRepository, CostsService], exports: [CostsService] })
export class CostsModule {}
