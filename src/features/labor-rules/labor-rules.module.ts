import { Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import { LaborRuleEntity } from './labor-rule.entity.js';
import { LaborRulesController } from './labor-rules.controller.js';
import { LaborRulesService } from './labor-rules.service.js';

@Module({ imports: [TypeOrmModule.forFeature([LaborRuleEntity])], controllers: [LaborRulesController], providers: [LaborRulesService], exports: [LaborRulesService] })
export class LaborRulesModule {}
