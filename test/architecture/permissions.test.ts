import { ModulesContainer } from '@nestjs/core';
import { ROLES } from '../../src/platform/auth/actor.js';
import { ALLOWED_ROLES, OPEN_ROUTE } from '../../src/platform/auth/allow.js';
import { startTestApp, type TestApp } from '../support/test-app.js';

const OPEN = ['CalendarController.read', 'DeviceSessionsController.create', 'DevicesController.enrol', 'HealthController.live', 'HealthController.ready', 'SessionsController.create', 'SessionsController.refresh'];

describe('routes', () => {
  let test: TestApp;
  let handlers: { name: string; roles: readonly string[] | undefined; open: boolean }[];

  beforeAll(async () => {
    test = await startTestApp();
    const controllers = [...test.app.get(ModulesContainer).values()].flatMap((module) => [...module.controllers.values()]);
    handlers = controllers.flatMap(({ metatype }) => {
      const { name, prototype } = metatype as unknown as { name: string; prototype: Record<string, object> };
      return Object.getOwnPropertyNames(prototype)
        .filter((key) => key !== 'constructor' && Reflect.hasMetadata('path', prototype[key] as object))
        .map((key) => ({
          name: `${name}.${key}`,
          roles: Reflect.getMetadata(ALLOWED_ROLES, prototype[key] as object) as readonly string[] | undefined,
          open: Reflect.getMetadata(OPEN_ROUTE, prototype[key] as object) === true,
        }));
    });
  });
  afterAll(() => test.close());

  it('each say who may call them', () => {
    expect(handlers.length).toBeGreaterThan(40);
    expect(handlers.filter(({ open, roles }) => !open && (roles === undefined || roles.length === 0)).map(({ name }) => name)).toEqual([]);
  });

  it('name only roles that there are', () => {
    expect(handlers.flatMap(({ roles }) => roles ?? []).filter((role) => !(ROLES as readonly string[]).includes(role))).toEqual([]);
  });

  it('are open only where a person can not have a token yet', () => {
    expect(handlers.filter(({ open }) => open).map(({ name }) => name).sort()).toEqual(OPEN);
  });

  it('answer 401 without a token, except the open ones', async () => {
    for (const path of ['/v1/company', '/v1/people', '/v1/customers', '/v1/jobs', '/v1/quotes', '/v1/invoices']) {
      const answer = await test.request('get', path);
      expect([path, answer.status, answer.body.code]).toEqual([path, 401, 'not-signed-in']);
    }
    expect((await test.request('get', '/health/ready')).status).toBe(200);
  });
});
