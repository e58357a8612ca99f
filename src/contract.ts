import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module.js';
import { Lifecycle } from './platform/http/lifecycle.js';
import { createAdapter } from './platform/http/fastify-adapter.js';
import { openApiDocument } from './platform/http/openapi.js';

/** The OpenAPI document as the text of openapi.json. Nothing is started: a preview of the application is enough. */
export async function contract(): Promise<string> {
  const lifecycle = new Lifecycle();
  const module = AppModule.with({ serviceUrl: 'postgresql://nobody@localhost/nothing', signingKey: '', lifecycle });
  const app = await NestFactory.create<NestFastifyApplication>(module, createAdapter('silent', lifecycle), { preview: true, logger: false, abortOnError: false });
  return `${JSON.stringify(openApiDocument(app), null, 2)}\n`;
}
