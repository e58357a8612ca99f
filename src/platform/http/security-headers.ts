import helmet from '@fastify/helmet';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';

const READS = ['GET', 'HEAD'];

/** Security headers for all answers; the reference page brings its own scripts and styles, from this service only. */
export async function addSecurityHeaders(app: NestFastifyApplication): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: { directives: { defaultSrc: ["'self'"], scriptSrc: ["'self'", "'unsafe-inline'"], styleSrc: ["'self'", "'unsafe-inline'"], imgSrc: ["'self'", 'data:'], upgradeInsecureRequests: null } },
    // Behind plain HTTP on a laptop this header would lock browsers out of every other service on the host.
    strictTransportSecurity: false,
  });
  // Before the routes, which may say more. What is read belongs to one person, and is asked for anew each time; answers
  // to the rest hold tokens and codes, which no browser or proxy may keep (RFC 6749, 5.1).
  app.getHttpAdapter().getInstance().addHook('onRequest', (request, reply, next) => {
    void reply.header('cache-control', READS.includes(request.method) ? 'private, no-cache' : 'no-store');
    next();
  });
}
