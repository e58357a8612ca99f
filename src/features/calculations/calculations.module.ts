import { Module } from '@nestjs/common';
import { controllerOf } from './calculation-controller.js';
import { CalculationsController } from './calculations.controller.js';
import { CALCULATIONS } from './topics/index.js';

@Module({ controllers: [CalculationsController, ...CALCULATIONS.map(controllerOf)] })
export class CalculationsModule {}
