import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesModule } from '../companies/index.js';
import { SiteEntity } from './site.entity.js';
import { SiteSync } from './site-sync.js';
import { SitesController } from './sites.controller.js';
import { SitesService } from './sites.service.js';

@Module({
  imports: [TypeOrmModule.forFeature([SiteEntity]), CompaniesModule],
  controllers: [SitesController],
  providers: [SitesService, SiteSync],
  exports: [SitesService],
})
export class SitesModule {}
