import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module.js';
import type { Provisioned } from './platform/database/provision.js';
import { keepStrangersShort } from './platform/auth/strangers.js';
import { Lifecycle } from './platform/http/lifecycle.js';
import { ApiDocument } from './platform/http/api-document.js';
import { addCompression } from './platform/http/compression.js';
import { createAdapter } from './platform/http/fastify-adapter.js';
import { addSecurityHeaders } from './platform/http/security-headers.js';
import { PinoNestLogger } from './platform/http/nest-logger.js';

/** The whole application on a prepared database, not yet listening. */
export async function createApp(database: Pick<Provisioned, 'serviceUrl' | 'signingKey'>, logLevel: string): Promise<NestFastifyApplication> {
  const lifecycle = new Lifecycle();
  const adapter = createAdapter(logLevel, lifecycle);
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with({ ...database, lifecycle }), adapter, {
    logger: new PinoNestLogger(() => adapter.getInstance().log),
    abortOnError: false,
    // The adapter brings its own; this one would also read forms.
    bodyParser: false,
  });
  app.get(ApiDocument).describe(app);
  await addSecurityHeaders(app);
  keepStrangersShort(app);
  await addCompression(app);
  return app;
}
