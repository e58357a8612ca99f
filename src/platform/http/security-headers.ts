import helmet from '@fastify/helmet';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';

/** Security headers for all answers; the reference page brings its own scripts and styles, from this service only. */
export async function addSecurityHeaders(app: NestFastifyApplication): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: { directives: { defaultSrc: ["'self'"], scriptSrc: ["'self'", "'unsafe-inline'"], styleSrc: ["'self'", "'unsafe-inline'"], imgSrc: ["'self'", 'data:'], upgradeInsecureRequests: null } },
    // Behind plain HTTP on a laptop this header would lock browsers out of every other service on the host.
    strictTransportSecurity: false,
  });
}
