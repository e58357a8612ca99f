import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { SwaggerModule } from '@nestjs/swagger';
import { openApiDocument } from './openapi.js';

/** Serves the API reference: a page for people at /docs, and the contract itself at /docs/openapi.json. */
export function serveReference(app: NestFastifyApplication): void {
  const document = openApiDocument(app);
  SwaggerModule.setup('docs', app, document, { jsonDocumentUrl: 'docs/openapi.json', customSiteTitle: 'Rillbook API', raw: ['json'], swaggerOptions: { persistAuthorization: false, validatorUrl: null } });
}
