import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import type { AppClient } from './test-app.js';
import { type Client, clientOf } from './test-company.js';

export interface TestDevice {
  readonly id: string;
  readonly credential: string;
  readonly refreshToken: string;
  /** Acts in the device's session. */
  readonly client: Client;
}

export function newSecret(): string {
  return randomBytes(32).toString('base64url');
}

/** A phone for a person, enrolled with a code that `lead` made, and signed in. */
export async function enrolDevice(test: AppClient, lead: Client, personId: string): Promise<TestDevice> {
  const { body: enrolment } = await lead.post('/v1/device-enrolments', { personId });
  const device = await test.request('post', '/v1/devices').send({ id: uuidv7(), code: enrolment.code as string, name: 'Yellow phone', secret: newSecret() });
  if (device.status !== 201) throw new Error(`enrolment failed: ${device.text}`);
  return signInDevice(test, device.body as { id: string; credential: string });
}

export async function signInDevice(test: AppClient, { id, credential }: { id: string; credential: string }): Promise<TestDevice> {
  const session = await test.request('post', '/v1/sessions/device').send({ credential });
  if (session.status !== 201) throw new Error(`sign-in failed: ${session.text}`);
  const { accessToken, refreshToken, person } = session.body as { accessToken: string; refreshToken: string; person: { id: string } };
  return { id, credential, refreshToken, client: clientOf(test, accessToken, person.id) };
}
