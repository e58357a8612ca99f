import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { SwaggerModule } from '@nestjs/swagger';
import { ApiDocument } from './api-document.js';

/** The page says Rillbook's name alone: without the bar and the icon of the library that draws it. */
const PLAIN = { customCss: '.swagger-ui .topbar { display: none }', customfavIcon: 'data:,' };

/** Serves the API reference: a page for people at /docs, and the contract itself at /docs/openapi.json. */
export function serveReference(app: NestFastifyApplication): void {
  const document = app.get(ApiDocument).get();
  SwaggerModule.setup('docs', app, document, { jsonDocumentUrl: 'docs/openapi.json', customSiteTitle: 'Rillbook API', ...PLAIN, raw: ['json'], swaggerOptions: { persistAuthorization: false, validatorUrl: null } });
}
