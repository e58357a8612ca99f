import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { byPassword, CrewPhone, Device, networkWire, NoAnswer, ShutOut, type SignIn, SignedOut, type Wire } from '../../examples/crew-client/index.js';
import { JobCrew } from '../../src/features/jobs/index.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, PASSWORD, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { makePhoto } from '../support/test-uploads.js';

const PIECE_SIZE = 200;

describe('the crew client against the service', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let emails: { crew: string; crewLead: string };
  let folder: string;
  let color = 0x200000;
  const folders: string[] = [];
  const open: { close(): void }[] = [];

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
    const emailOf = async ({ personId }: Client): Promise<string> => (await company.owner.get(`/v1/people/${personId}`)).body.email as string;
    emails = { crew: await emailOf(company.crew), crewLead: await emailOf(company.crewLead) };
    await test.app.get(JobCrew, { strict: false }).join(actorOf(company), jobId, [company.crew.personId]);
  });
  afterAll(() => test.close());
  beforeEach(newFolder);
  afterEach(() => {
    for (const each of open.splice(0)) each.close();
    for (const each of folders.splice(0)) rmSync(each, { recursive: true });
  });

  function newFolder(): void {
    folder = mkdtempSync(path.join(tmpdir(), 'rillbook-phone-'));
    folders.push(folder);
  }

  const wire: Wire = (request) => networkWire(test.url)(request);
  const photo = (): Promise<Buffer> => makePhoto(`#${(color += 12345).toString(16)}`);
  const hour = (day: number) => ({ kind: 'time-entry.log', body: { id: crypto.randomUUID(), jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt: `2026-02-${10 + day}T13:00:00Z`, endedAt: `2026-02-${10 + day}T17:00:00Z` } });

  /** Carries the request, and loses the answers for which this is true. */
  function losing(which: (path: string, method: string) => boolean): Wire {
    return async (request) => {
      const answer = await wire(request);
      if (which(request.path, request.method)) throw new Error('the signal is gone');
      return answer;
    };
  }

  function phone(signIn: SignIn, network: Wire = wire): CrewPhone {
    const made = new CrewPhone({ folder, wire: network, signIn, pieceSize: PIECE_SIZE, sleep: () => Promise.resolve(), random: () => 0 });
    open.push(made);
    return made;
  }

  function device(): Device {
    const made = new Device(folder);
    open.push(made);
    return made;
  }

  async function code(): Promise<string> {
    return (await company.crewLead.post('/v1/device-enrolments', { personId: company.crew.personId })).body.payload as string;
  }

  function crew(network: Wire = wire): CrewPhone {
    return phone(byPassword(emails.crew, PASSWORD), network);
  }

  const attached = async (id: string): Promise<{ status: number; sha256: string }> => {
    const content = await test.http().get(`/v1/attachments/${id}/content`).set('authorization', `Bearer ${company.owner.token}`).buffer().parse((answer, done) => {
      const chunks: Buffer[] = [];
      answer.on('data', (chunk: Buffer) => chunks.push(chunk)).on('end', () => done(null, Buffer.concat(chunks)));
    });
    return { status: content.status, sha256: createHash('sha256').update(content.body as Buffer).digest('hex') };
  };

  it('enrols with a code once, though the answer to the enrolment was lost and the phone died', async () => {
    const shown = await code();
    const dying = device();
    dying.take(shown, 'Yellow phone');
    await expect(phone(dying, losing((to) => to === '/v1/devices')).sync(1)).rejects.toThrow(NoAnswer);
    const again = device();
    again.take(shown, 'Yellow phone');
    await phone(again).sync(1);
    expect(again.isEnrolled).toBe(true);
    const { body } = await company.crewLead.get(`/v1/devices?personId=${company.crew.personId}`);
    expect(body.items).toHaveLength(1);
  });

  it('exchanges its credential again when its session ended', async () => {
    const own = device();
    own.take(await code(), 'Yellow phone');
    const client = phone(own);
    await client.sync(1);
    // A device has one session: this ends the other.
    await device().open(wire);
    client.note(hour(0));
    await client.sync(1);
    expect([client.waiting, client.troubles]).toEqual([[], []]);
  });

  it('stops when it was shut out, keeps its work, hands it out, and goes on when it is enrolled anew', async () => {
    const own = device();
    own.take(await code(), 'Lost phone');
    const client = phone(own);
    await client.sync(1);
    const [kept] = client.note(hour(1));
    client.attach(await photo(), { subject: { kind: 'job', id: jobId }, kind: 'photo' });
    const { body } = await company.crewLead.get(`/v1/devices?personId=${company.crew.personId}`);
    for (const { id } of body.items as { id: string }[]) await company.crewLead.post(`/v1/devices/${id}/revoke`, {});
    await expect(client.sync()).rejects.toThrow(ShutOut);
    let requests = 0;
    const found = phone(device(), (request) => {
      requests++;
      return wire(request);
    });
    await expect(found.sync()).rejects.toThrow(ShutOut);
    expect([requests, found.waiting.length, found.unsent.length]).toEqual([0, 1, 1]);

    const work = JSON.parse(JSON.stringify(found.handOut())) as ReturnType<CrewPhone['handOut']>;
    newFolder();
    const other = phone(byPassword(emails.crewLead, PASSWORD));
    other.note(hour(2));
    other.takeOver(work);
    other.takeOver(work);
    expect(other.waiting.map(({ counter }) => counter)).toEqual([1, 2]);
    await other.sync(1);
    expect([other.waiting, other.unsent, other.troubles]).toEqual([[], [], []]);

    const anew = device();
    anew.take(await code(), 'Found phone');
    await phone(anew).sync(1);
    expect(await test.sql('SELECT 1 FROM sync_mutation WHERE id = $1', [kept?.id])).toHaveLength(1);
  });

  it('says what was wrong with a code, and keeps its work', async () => {
    const own = device();
    own.take('AAAA-BBBB-CCCC-DDDD', 'Yellow phone');
    const client = phone(own);
    client.note(hour(3));
    await expect(client.sync()).rejects.toThrow(/enrolment-refused/);
    await expect(client.sync()).rejects.toThrow(SignedOut);
    own.take(await code(), 'Yellow phone');
    await client.sync(1);
    expect(client.waiting).toEqual([]);
  });

  it('starts and stops hours without a signal, and knows what runs', async () => {
    const client = crew();
    const start = client.start({ jobId, personId: company.crew.personId, costCode: 'cleanout' });
    const { id } = start.body as { id: string };
    expect(client.running(company.crew.personId)).toEqual([id]);
    await client.push();
    expect(crew().running(company.crew.personId)).toEqual([id]);
    await client.pull();
    expect([client.running(company.crew.personId), client.running(company.owner.personId)]).toEqual([[id], []]);
    client.stop(id, { unpaidBreakMinutes: 0 });
    expect(client.running(company.crew.personId)).toEqual([]);
    await client.push();
    expect(client.running(company.crew.personId)).toEqual([]);
    await client.pull();
    expect([client.running(company.crew.personId), client.troubles]).toEqual([[], []]);
  });

  it('lets a stop wait for its start', () => {
    const client = crew();
    const start = client.start({ jobId, personId: company.crew.personId, costCode: 'cleanout' });
    expect(client.stop((start.body as { id: string }).id).dependsOn).toEqual([start.id]);
  });

  it('sends a photo in pieces, goes on after a death between two of them, and attaches it once', async () => {
    const bytes = await photo();
    await company.owner.patch('/v1/company', { keepPhotoLocation: true });
    let pieces = 0;
    const dying = crew(losing((_path, method) => method === 'PATCH' && ++pieces === 2));
    const taken = dying.attach(bytes, { subject: { kind: 'job', id: jobId }, kind: 'photo', caption: 'North edge' });
    await expect(dying.sync(1)).rejects.toThrow(NoAnswer);
    let sent = 0;
    const again = crew((request) => {
      if (request.method === 'PATCH') sent += (request.body as Uint8Array).length;
      return wire(request);
    });
    await again.sync(1);
    expect(sent).toBe(bytes.length - 2 * PIECE_SIZE);
    expect([again.waiting, again.unsent, again.troubles]).toEqual([[], [], []]);
    expect(await attached(taken.body.id)).toEqual({ status: 200, sha256: taken.sha256 });
    expect(readdirSync(path.join(folder, 'photos'))).toEqual([]);
  });

  it('sends the bytes anew when the upload was gone before it was attached', async () => {
    const dying = crew(losing((to) => to === '/v1/sync/push'));
    const taken = dying.attach(await photo(), { subject: { kind: 'job', id: jobId }, kind: 'photo' });
    await expect(dying.pushPhotos()).rejects.toThrow(NoAnswer);
    // As if that push had never arrived, and a week had passed.
    await test.sql('DELETE FROM sync_mutation WHERE id = $1', [taken.id]);
    await test.sql('DELETE FROM attachment WHERE id = $1', [taken.body.id]);
    await test.sql('DELETE FROM upload_piece');
    await test.sql('DELETE FROM upload');
    const again = crew();
    await again.push();
    expect([again.waiting.length, again.unsent.length, again.troubles]).toEqual([0, 1, []]);
    await again.sync(1);
    expect([again.waiting.length, again.unsent.length, again.troubles]).toEqual([0, 0, []]);
    expect((await attached(taken.body.id)).status).toBe(200);
  });

  it('shows a file that the service does not take, until somebody has looked at it', async () => {
    const client = crew();
    const taken = client.attach(Buffer.from('no picture at all'), { subject: { kind: 'job', id: jobId }, kind: 'photo' });
    await client.sync(1);
    const again = crew();
    expect(again.troubles.map(({ mutation, outcome }) => [mutation.id, outcome.problem?.status])).toEqual([[taken.id, 415]]);
    expect([again.unsent, readdirSync(path.join(folder, 'photos'))]).toEqual([[], [taken.sha256]]);
    again.lookedAt(taken.id);
    expect([again.troubles, readdirSync(path.join(folder, 'photos'))]).toEqual([[], []]);
  });
});
