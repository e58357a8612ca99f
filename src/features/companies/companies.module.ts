import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { CompaniesController } from './companies.controller.js';
import { CompaniesService } from './companies.service.js';
import { CompanyEntity } from './company.entity.js';

@Module({ imports: [TypeOrmModule.forFeature([CompanyEntity])], controllers: [CompaniesController], providers: [CompaniesService], exports: [CompaniesService] })
export class CompaniesModule {}
