import supertest from 'supertest';
import { CompaniesService } from '../../src/features/companies/index.js';
import { PeopleService } from '../../src/features/people/index.js';
import { SetPassword } from '../../src/features/sessions/index.js';
import type { Role } from '../../src/platform/auth/actor.js';
import type { AppClient } from './test-app.js';
import { uploadWhole } from './test-uploads.js';

export const PASSWORD = 'seven herons on a mossy ledge';

export interface Client {
  readonly personId: string;
  readonly token: string;
  get(path: string): supertest.Test;
  post(path: string, body?: object): supertest.Test;
  /** A merge patch; reads the ETag first unless one is given. */
  patch(path: string, body: object, etag?: string): Promise<supertest.Response>;
  delete(path: string): supertest.Test;
  /** Sends a file by the upload protocol, in one request. @returns the id of the upload */
  upload(bytes: Buffer): Promise<string>;
}

export interface TestCompany {
  readonly id: string;
  readonly owner: Client;
  readonly estimator: Client;
  readonly crewLead: Client;
  readonly crew: Client;
}

let made = 0;

/** A company of invented people, one of each role, all signed in. Sell rate 68.00, increment 0.25, materials taxed 6.25 %. */
export async function makeTestCompany(test: AppClient, settings: object = {}): Promise<TestCompany> {
  const n = ++made;
  const actor = await test.app.get(CompaniesService).create({
    name: `Fernhollow Water Gardens ${n}`,
    address: '12 Mill Race Lane\nAlder Falls, MI 48000',
    licenceNumber: 'MI-000000',
    currency: 'USD',
    timeZone: 'America/Detroit',
    locale: 'en-US',
    unitSystem: 'us',
    paperSize: 'letter',
    laborSellRate: '68.00',
    hourIncrement: '0.25',
    taxCategories: [{ code: 'materials', name: 'Sales tax', rate: '6.25' }],
    laborTaxCategory: null,
    paymentTermsDays: 30,
    ...settings,
  });
  const people = test.app.get(PeopleService, { strict: false });
  const passwords = test.app.get(SetPassword, { strict: false });
  const enter = async (role: Role, hourlyWage: string): Promise<Client> => {
    const email = `${role}-${n}@fernhollow.example`;
    const { row } = await people.create(actor, { name: `Test ${role}`, email, role, hourlyWage, burdenPercent: '22.5' });
    await passwords.execute(actor, row.id, { password: PASSWORD });
    return signIn(test, email);
  };
  return {
    id: actor.companyId,
    owner: await enter('owner', '45.00'),
    estimator: await enter('estimator', '38.00'),
    crewLead: await enter('crew-lead', '32.00'),
    crew: await enter('crew', '24.00'),
  };
}

export async function signIn(test: AppClient, email: string, password = PASSWORD): Promise<Client> {
  const answer = await test.request('post', '/v1/sessions').send({ email, password });
  if (answer.status !== 201) throw new Error(`sign-in failed: ${answer.text}`);
  return clientOf(test, answer.body.accessToken as string, answer.body.person.id as string);
}

/** Acts with a token. */
export function clientOf(test: AppClient, token: string, personId: string): Client {
  const with_ = (request: supertest.Test): supertest.Test => request.set('authorization', `Bearer ${token}`);
  return {
    personId,
    token,
    get: (path) => with_(test.request('get', path)),
    post: (path, body) => with_(test.request('post', path)).send(body ?? {}),
    patch: async (path, body, etag) => {
      const version = etag ?? ((await with_(test.request('get', path))).headers['etag']) ?? '"1"';
      return with_(test.request('patch', path)).set('if-match', version).set('content-type', 'application/merge-patch+json').send(JSON.stringify(body));
    },
    delete: (path) => with_(test.request('delete', path)),
    upload: (bytes) => uploadWhole(test, token, bytes),
  };
}
