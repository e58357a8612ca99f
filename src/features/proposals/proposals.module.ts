import { Module } from '@nestjs/common';
import { PartsModule } from '../catalog/index.js';
import { CompaniesModule } from '../companies/index.js';
import { LaborRulesModule } from '../labor-rules/index.js';
import { SurveysModule } from '../surveys/index.js';
import { ProposalsController } from './proposals.controller.js';
import { ProposeWork } from './propose-work.js';

@Module({ imports: [SurveysModule, LaborRulesModule, PartsModule, CompaniesModule], controllers: [ProposalsController], providers: [ProposeWork] })
export class ProposalsModule {}
