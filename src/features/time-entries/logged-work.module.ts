import { Module } from '@nestjs/common';
import { LoggedWorkRepository } from './logged-work.repository.js';
import { WorkSumsRepository } from './work-sums.repository.js';

/** Apart from the slice's other routes and rules, since whoever works out pay only reads. */
@Module({ providers: [LoggedWorkRepository, WorkSumsRepository], exports: [LoggedWorkRepository, WorkSumsRepository] })
export class LoggedWorkModule {}
