import { type INestApplication, Injectable } from '@nestjs/common';
import type { OpenAPIObject } from '@nestjs/swagger';
import { openApiDocument } from './openapi.js';

/** The contract of the running application, made when it is first asked for. */
@Injectable()
export class ApiDocument {
  private app: INestApplication | null = null;
  private document: OpenAPIObject | null = null;

  describe(app: INestApplication): void {
    this.app = app;
  }

  get(): OpenAPIObject {
    if (this.app === null) throw new Error('The application is not made yet.');
    this.document ??= openApiDocument(this.app);
    return this.document;
  }
}
