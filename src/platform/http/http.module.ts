import { type DynamicModule, Global, Module } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import { AuthGuard } from '../auth/auth.guard.js';
import { Lifecycle } from './lifecycle.js';
import { ApiDocument } from './api-document.js';
import { HealthController } from './health.controller.js';
import { ProblemFilter } from './problem.filter.js';
import { ReplyInterceptor } from './reply.js';
import { ValidationPipe } from './validation.js';

@Global()
@Module({})
export class HttpModule {
  static with(lifecycle: Lifecycle): DynamicModule {
    return {
      module: HttpModule,
      controllers: [HealthController],
      providers: [
        ApiDocument,
        { provide: Lifecycle, useValue: lifecycle },
        { provide: APP_GUARD, useClass: AuthGuard },
        { provide: APP_PIPE, useClass: ValidationPipe },
        { provide: APP_INTERCEPTOR, useClass: ReplyInterceptor },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
      exports: [Lifecycle, ApiDocument],
    };
  }
}
