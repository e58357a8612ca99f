import { Global, Module } from '@nestjs/common';
import { DocumentNumbers } from './document-numbers.js';

@Global()
@Module({ providers: [DocumentNumbers], exports: [DocumentNumbers] })
export class NumberingModule {}
