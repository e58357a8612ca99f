import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module.js';
import { Draining } from './platform/http/draining.js';
import { createAdapter } from './platform/http/fastify-adapter.js';
import { openApiDocument } from './platform/http/openapi.js';

/** The OpenAPI document as the text of openapi.json. Nothing is started: a preview of the application is enough. */
export async function contract(): Promise<string> {
  const draining = new Draining();
  const module = AppModule.with({ serviceUrl: 'postgresql://nobody@localhost/nothing', signingKey: '', draining });
  const app = await NestFactory.create<NestFastifyApplication>(module, createAdapter('silent', draining), { preview: true, logger: false, abortOnError: false });
  return `${JSON.stringify(openApiDocument(app), null, 2)}\n`;
}
