import type { TestCompany } from './test-company.js';

export interface TestPond {
  readonly customerId: string;
  readonly siteId: string;
  readonly featureId: string;
}

/** A customer of the company with a site and a pond on it. */
export async function makeTestPond({ owner }: TestCompany): Promise<TestPond> {
  const enter = async (path: string, body: object): Promise<string> => {
    const answer = await owner.post(path, body);
    if (answer.status !== 201) throw new Error(`POST ${path} failed: ${answer.text}`);
    return answer.body.id as string;
  };
  const customerId = await enter('/v1/customers', { name: 'Marta Ellingsworth' });
  const siteId = await enter('/v1/sites', { customerId, address: '4 Osier Court\nAlder Falls, MI 48000' });
  const featureId = await enter('/v1/features', { siteId, kind: 'pond', name: 'Lower pond' });
  return { customerId, siteId, featureId };
}
