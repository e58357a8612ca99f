import { type DynamicModule, Global, Module } from '@nestjs/common';
import { TypeOrmModule } from '@nestjs/typeorm';
import pg from 'pg';
import { TenantDatabase } from './tenant-database.js';

// A calendar day is a day, not an instant: left alone, the driver would turn it into local midnight.
pg.types.setTypeParser(pg.types.builtins.DATE, (text: string) => text);

/** The pool of the service's own login. Entities register themselves in their slice's module. */
@Global()
@Module({})
export class DatabaseModule {
  static connect(serviceUrl: string): DynamicModule {
    return {
      module: DatabaseModule,
      imports: [
        TypeOrmModule.forRoot({
          type: 'postgres',
          url: serviceUrl,
          autoLoadEntities: true,
          synchronize: false,
          installExtensions: false,
          retryAttempts: 0,
          poolSize: 20,
          connectTimeoutMS: 5_000,
          applicationName: 'rillbook',
          // The pool reports a connection that the server closed; the next checkout opens a new one.
          poolErrorHandler: () => undefined,
        }),
      ],
      providers: [TenantDatabase],
      exports: [TenantDatabase],
    };
  }
}
