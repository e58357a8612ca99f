import { Module, type OnModuleInit } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import type { FastifyAdapter } from '@nestjs/platform-fastify';
import { TypeOrmModule } from '@nestjs/typeorm';
import { acceptCsvAt } from '../../platform/http/csv-body.js';
import { CompaniesModule } from '../companies/index.js';
import { ExchangeParts } from './csv/exchange-parts.js';
import { PartsCsvController } from './csv/parts-csv.controller.js';
import { PartsImportRepository } from './csv/parts-import.repository.js';
import { PartCostEntity } from './part-cost.entity.js';
import { PartCostsRepository } from './part-costs.repository.js';
import { PartEntity } from './part.entity.js';
import { PartsController } from './parts.controller.js';
import { PartsService } from './parts.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([PartEntity, PartCostEntity]), CompaniesModule],
  controllers: [PartsCsvController, PartsController],
  providers: [PartsService, PartCostsRepository, PartsImportRepository, ExchangeParts],
  exports: [PartsService],
})
export class PartsModule implements OnModuleInit {
  constructor(private readonly host: HttpAdapterHost<FastifyAdapter>) {}

  onModuleInit(): void {
    acceptCsvAt(this.host.httpAdapter.getInstance(), '/v1/parts/import');
  }
}
