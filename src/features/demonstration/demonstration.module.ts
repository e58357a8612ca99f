import { Module } from '@nestjs/common';
import { Demonstration } from './demonstration.js';

@Module({ providers: [Demonstration], exports: [Demonstration] })
export class DemonstrationModule {}
