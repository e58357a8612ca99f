import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';
import { makePhoto } from '../support/test-uploads.js';

const AT = '2027-05-03T14:30:00.000Z';

describe('field facts of an unlucky crew', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const pump = (serialNumber: string) => ({ id: uuidv7(), jobId, featureId: pond.featureId, installedAt: AT, kind: 'pump', serialNumber });

  it('make one item of a pump that many phones take down at once', async () => {
    for (let round = 0; round < 4; round++) {
      const serialNumber = uuidv7();
      const answers = await Promise.all([0, 1, 2, 3, 4, 5].map((i) => company[i % 2 === 0 ? 'crew' : 'crewLead'].post('/v1/installations', pump(serialNumber))));
      expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201, 201]);
      expect(new Set(answers.map(({ body }) => body.equipmentId as string)).size).toBe(1);
    }
  });

  it('are taken down once when the same record comes by two connections at once', async () => {
    const sent = pump(uuidv7());
    const answers = await Promise.all([0, 1, 2, 3].map(() => company.crew.post('/v1/installations', sent)));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 200, 200, 201]);
    expect(new Set(answers.map(({ body }) => JSON.stringify(body))).size).toBe(1);
  });

  it('let one of two changes of a punch-list item win, and tell the other', async () => {
    const { body: item } = await company.crew.post('/v1/punch-items', { jobId, description: 'Reset two stones' });
    const answers = await Promise.all(['crew', 'crewLead'].map((who) => company[who as 'crew'].patch(`/v1/punch-items/${item.id}`, { state: 'done' }, '"1"')));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
  });

  it('keep the first of two reasons given at once', async () => {
    const { body: load } = await company.crew.post('/v1/loads', { jobId, hauledAt: AT, material: 'sediment' });
    const answers = await Promise.all(['One', 'Two', 'Three'].map((reason) => company.crewLead.post(`/v1/loads/${load.id}/void`, { reason })));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200]);
    expect(new Set(answers.map(({ body }) => JSON.stringify(body))).size).toBe(1);
  });

  it('give one of two answers of the office at once, and refuse the other', async () => {
    const { body: request } = await company.crew.post('/v1/change-requests', { jobId, foundAt: AT, description: 'Liner torn' });
    const answers = await Promise.all(['taken-up', 'declined'].map((decision) => company.owner.post(`/v1/change-requests/${request.id}/answer`, { decision })));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
  });

  it('say the bounds of a quantity in the unit that was sent', async () => {
    const answer = await company.crew.post('/v1/loads', { jobId, hauledAt: AT, material: 'sediment', volume: { value: 1e308, unit: 'yd3' } });
    expect([answer.status, answer.body.errors[0].detail]).toEqual([400, 'is out of range; a volume here lies between 0 and 130795 yd3']);
  });

  it('take out the item that a voided record made, and make a new one of the same plate', async () => {
    const serialNumber = uuidv7();
    const { body: wrong } = await company.crew.post('/v1/installations', pump(serialNumber));
    const { body: voided } = await company.crew.post(`/v1/installations/${wrong.id}/void`, { reason: 'Wrong make' });
    expect(voided.warnings).toEqual([]);
    const item = (await company.owner.get(`/v1/equipment/${wrong.equipmentId}`)).body;
    // By the clock of the test the void comes before the day that the phone gave.
    expect(item).toMatchObject({ installedOn: '2027-05-03', removedOn: '2027-05-03' });
    const { body: right } = await company.crew.post('/v1/installations', pump(serialNumber));
    expect(right.equipmentId).toBe(right.id);
    expect((await company.owner.get(`/v1/equipment/${right.id}`)).body.removedOn).toBeNull();
    expect((await company.owner.patch(`/v1/equipment/${wrong.id}`, { removedOn: null })).body.removedOn).toBeNull();
  });

  it('leave the item that somebody changed or something names, and warn of it', async () => {
    const stays = async (happens: (id: string, serialNumber: string) => Promise<unknown>): Promise<[string | null, string[]]> => {
      const serialNumber = uuidv7();
      const { body: record } = await company.crew.post('/v1/installations', pump(serialNumber));
      await happens(record.id as string, serialNumber);
      const { body: voided } = await company.crew.post(`/v1/installations/${record.id}/void`, { reason: 'Not put in' });
      expect((await company.crew.get(`/v1/installations/${record.id}`)).body).toEqual(voided);
      return [(await company.owner.get(`/v1/equipment/${record.id}`)).body.removedOn as string | null, voided.warnings as string[]];
    };
    const named = expect.stringContaining('an attachment names it') as string;
    expect(await stays((id) => company.owner.patch(`/v1/equipment/${id}`, { condition: 'Hums' }))).toEqual([null, [expect.stringContaining('was changed since')]]);
    expect(await stays((_, serialNumber) => company.crewLead.post('/v1/installations', pump(serialNumber)))).toEqual([null, [named]]);
    const survey = (id: string) => ({ featureId: pond.featureId, surveyedOn: '2027-06-01', outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } }, accessFactor: '1', equipmentCondition: [{ equipmentId: id.toUpperCase(), condition: 'Hums', works: 'unknown' }] });
    expect(await stays((id) => company.owner.post('/v1/surveys', survey(id)).expect(201))).toEqual([null, [named]]);
    const receipt = async (equipmentId: string) => company.owner.post('/v1/attachments', { uploadId: await company.owner.upload(await makePhoto()), subject: { kind: 'equipment', id: equipmentId }, kind: 'receipt' }).expect(201);
    expect(await stays(receipt)).toEqual([null, [named]]);
  });

  it('take out an item with the last of the records that name it', async () => {
    const serialNumber = uuidv7();
    const { body: first } = await company.crew.post('/v1/installations', pump(serialNumber));
    const { body: second } = await company.crew.post('/v1/installations', pump(serialNumber));
    const removed = async (id: string): Promise<unknown> => {
      await company.crew.post(`/v1/installations/${id}/void`, { reason: 'Not put in' }).expect(200);
      return (await company.owner.get(`/v1/equipment/${first.id}`)).body.removedOn as unknown;
    };
    expect([await removed(first.id as string), await removed(second.id as string)]).toEqual([null, '2027-05-03']);
  });

  it('say nothing of an item that another record made, or that was taken out before', async () => {
    const serialNumber = uuidv7();
    const { body: first } = await company.crew.post('/v1/installations', pump(serialNumber));
    const { body: second } = await company.crew.post('/v1/installations', pump(serialNumber));
    expect((await company.crew.post(`/v1/installations/${second.id}/void`, { reason: 'Twice' })).body.warnings).toEqual([]);
    expect((await company.owner.get(`/v1/equipment/${first.id}`)).body.removedOn).toBeNull();
    await company.owner.post('/v1/attachments', { uploadId: await company.owner.upload(await makePhoto('#123456')), subject: { kind: 'equipment', id: first.id }, kind: 'photo' }).expect(201);
    await company.owner.patch(`/v1/equipment/${first.id}`, { removedOn: '2027-06-01' });
    expect((await company.crew.post(`/v1/installations/${first.id}/void`, { reason: 'Not put in' })).body.warnings).toEqual([]);
    expect((await company.owner.get(`/v1/equipment/${first.id}`)).body.removedOn).toBe('2027-06-01');
  });
});
