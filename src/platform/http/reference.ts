import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { SwaggerModule } from '@nestjs/swagger';
import { ApiDocument } from './api-document.js';

/** Serves the API reference: a page for people at /docs, and the contract itself at /docs/openapi.json. */
export function serveReference(app: NestFastifyApplication): void {
  const document = app.get(ApiDocument).get();
  SwaggerModule.setup('docs', app, document, { jsonDocumentUrl: 'docs/openapi.json', customSiteTitle: 'Rillbook API', raw: ['json'], swaggerOptions: { persistAuthorization: false, validatorUrl: null } });
}
