import { appendFileSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Mutation, Outcome, PulledItem } from '../../examples/crew-client/index.js';
import { byPassword, CrewPhone, NoAnswer, Session, SignedOut, type Wire } from '../../examples/crew-client/index.js';
import { PretendedService, problem } from './pretended-service.js';

const HOUR = { kind: 'time-entry.log', body: { costCode: 'cleanout', startedAt: '2027-05-03T07:30:00-04:00', endedAt: '2027-05-03T12:00:00-04:00' } };
const upsert = (id: string, revision = 1): PulledItem => ({ kind: 'time-entry', id, change: 'upsert', revision, value: { id, revision } });
const final = { final: true } as const;

describe('the crew client', () => {
  let folder: string;
  let service: PretendedService;
  let slept: number[];
  const open: CrewPhone[] = [];

  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'rillbook-phone-'));
    service = new PretendedService();
    slept = [];
  });
  afterEach(() => {
    for (const phone of open.splice(0)) phone.close();
    rmSync(folder, { recursive: true });
  });

  /** The phone in this folder: a second one finds what the first one left, as after a restart. */
  function phone(wire: Wire = service.wire, password = 'right', onSettled: (outcomes: readonly Outcome[]) => void = () => undefined): CrewPhone {
    const made = new CrewPhone({
      folder, wire, signIn: byPassword('crew@fernhollow.example', password), random: () => 1, onSettled,
      sleep: (milliseconds) => {
        slept.push(milliseconds);
        return Promise.resolve();
      },
    });
    open.push(made);
    return made;
  }

  /** Carries the request, and loses the first answers that fit. */
  function losing(which: string, times = 1): Wire {
    let left = times;
    return async (request) => {
      const answer = await service.wire(request);
      if (!request.path.startsWith(which) || left-- <= 0) return answer;
      throw new Error('the signal is gone');
    };
  }

  const ids = (mutations: readonly Mutation[]): string[] => mutations.map(({ id }) => id);
  const rows = (from: CrewPhone): string[] => from.rows().map(({ id }) => id).sort();

  it('keeps what was noted without a signal over a restart, in order, and counts on', () => {
    const noted = phone().note(HOUR, HOUR);
    const again = phone();
    const third = again.note(HOUR);
    expect(ids(again.waiting)).toEqual(ids([...noted, ...third]));
    expect(again.waiting.map(({ counter }) => counter)).toEqual([1, 2, 3]);
  });

  it('sends the same mutation again when it died before it knew the answer, and settles it once', async () => {
    const dying = phone(losing('/v1/sync/push'));
    const noted = dying.note(HOUR);
    await expect(dying.push()).rejects.toThrow(NoAnswer);
    const again = phone();
    expect(ids(again.waiting)).toEqual(ids(noted));
    await expect(again.push()).resolves.toMatchObject({ settled: 1 });
    expect(ids(service.applied)).toEqual(ids(noted));
    expect([again.waiting, again.troubles]).toEqual([[], []]);
  });

  it('cuts off the half record of a phone that died while writing, and loses nothing before it', () => {
    const noted = phone().note(HOUR);
    appendFileSync(path.join(folder, 'phone.jsonl'), '{"event":"queued","mutations":[{"id":"0');
    const again = phone();
    again.note(HOUR);
    expect(ids(phone().waiting)).toEqual(ids(again.waiting));
    expect(ids(again.waiting).slice(0, 1)).toEqual(ids(noted));
    expect(again.waiting).toHaveLength(2);
  });

  it('takes half an answer for none, and keeps the page before it', async () => {
    service.pages = [[upsert('a')], [upsert('b')]];
    let pulls = 0;
    const cut = phone(async (request) => {
      const answer = await service.wire(request);
      return request.path.startsWith('/v1/sync/pull') && ++pulls === 2 ? { ...answer, text: answer.text.slice(0, 20) } : answer;
    });
    await expect(cut.pull()).rejects.toThrow(NoAnswer);
    expect(rows(cut)).toEqual(['a']);
    const again = phone();
    await again.pull();
    expect(rows(again)).toEqual(['a', 'b']);
  });

  it('sends a week\'s work in pushes of 500, and in smaller ones when they are too large', async () => {
    const client = phone();
    client.note(...Array.from({ length: 1_200 }, () => HOUR));
    service.largestPush = 300;
    await client.push();
    expect(service.sizes).toEqual([500, 250, 250, 250, 250, 200]);
    expect(service.applied).toHaveLength(1_200);
    expect(client.waiting).toHaveLength(0);
  });

  it('gets through to what lies behind five hundred that the service can not settle yet', async () => {
    const client = phone();
    const blocked = client.note(...Array.from({ length: 600 }, () => ({ kind: 'gauge.read', body: {} })));
    const [behind] = client.note(HOUR);
    service.judge = ({ kind }) => (kind === 'gauge.read' ? { outcome: 'rejected', problem: { status: 422, code: 'unknown-kind', detail: '' }, final: false } : null);
    await client.push();
    expect([ids(service.applied), client.waiting.length]).toEqual([[behind?.id], blocked.length]);
  });

  it('shows the one mutation that no push can carry, and sends the others', async () => {
    const client = phone();
    const [huge] = client.note({ ...HOUR, body: { huge: true } });
    const good = client.note(HOUR, HOUR);
    const wire: Wire = (request) => (String(request.body).includes('"huge"') ? Promise.resolve(problem(413, 'body-too-large')) : service.wire(request));
    await phone(wire).push();
    expect(ids(service.applied)).toEqual(ids(good));
    expect(phone().troubles.map(({ mutation, outcome }) => [mutation.id, outcome.problem?.code])).toEqual([[huge?.id, 'body-too-large']]);
  });

  it('settles everything once when it is told to send twice at the same time', async () => {
    const settled: string[] = [];
    const client = phone(service.wire, 'right', (outcomes) => settled.push(...outcomes.map(({ id }) => id)));
    const noted = client.note(HOUR, HOUR);
    await Promise.all([client.push(), client.push(), client.pull()]);
    expect([settled, service.signIns]).toEqual([ids(noted), 1]);
  });

  it('shows a rejection and a conflict, and settles what came beside them', async () => {
    const client = phone();
    const [good, bad, late] = client.note(HOUR, { ...HOUR, body: { bad: true } }, { kind: 'time-entry.correct', body: { id: 'x' }, baseRevision: 1 });
    const said = { status: 422, code: 'not-possible', detail: 'no such cost code' };
    service.judge = ({ id }) => (id === bad?.id ? { outcome: 'rejected', problem: said, ...final } : id === late?.id ? { outcome: 'conflict', revision: 4, current: { note: 'theirs' }, ...final } : null);
    await client.push();
    expect(ids(service.applied)).toEqual([good?.id]);
    expect(client.waiting).toHaveLength(0);
    expect(phone().troubles.map(({ outcome }) => outcome.outcome)).toEqual(['rejected', 'conflict']);
  });

  it('sends a change anew on the revision of the others when somebody insists', async () => {
    const client = phone();
    const [late] = client.note({ kind: 'time-entry.correct', body: { id: 'x', note: 'mine' }, baseRevision: 1 });
    service.judge = ({ baseRevision }) => (baseRevision === 4 ? null : { outcome: 'conflict', revision: 4, current: {}, ...final });
    await client.push();
    const anew = client.insist(late?.id ?? '');
    expect([anew.baseRevision, anew.body, client.troubles]).toEqual([4, late?.body, []]);
    await client.push();
    expect(ids(service.applied)).toEqual([anew.id]);
    expect(() => client.insist(anew.id)).toThrow('no conflict');
  });

  it('keeps what is not settled for good, and lets go of what builds on a rejected one', async () => {
    const client = phone();
    const [first] = client.note({ kind: 'load.record', body: {} });
    const [second] = client.note({ ...HOUR, dependsOn: [first?.id ?? ''] });
    const missing = { outcome: 'rejected', problem: { status: 409, code: 'dependency-missing', detail: '' }, final: false } as const;
    service.judge = ({ id }) => (id === first?.id ? { ...missing, problem: { status: 422, code: 'kind-unknown', detail: '' } } : missing);
    await client.push();
    expect(client.waiting).toHaveLength(2);
    service.judge = ({ id }) => (id === first?.id ? { outcome: 'rejected', ...final } : missing);
    await client.push();
    expect(client.waiting).toHaveLength(0);
    expect(client.troubles.map(({ mutation }) => mutation.id)).toEqual([first?.id, second?.id]);
  });

  it('starts over when its cursor is too old, keeps its unsent work, and drops what did not come again', async () => {
    service.pages = [[upsert('a'), upsert('b')]];
    const client = phone();
    await client.pull();
    client.note(HOUR);
    service.pages = [[], [upsert('b', 2)], [upsert('c')]];
    service.cursorsExpired = true;
    await client.pull();
    expect(rows(client)).toEqual(['b', 'c']);
    expect(client.rows().map(({ revision }) => revision)).toEqual([2, 1]);
    expect(client.waiting).toHaveLength(1);
  });

  it('goes on starting over after it died in the middle of that', async () => {
    service.pages = [[upsert('a'), upsert('b')]];
    await phone().pull();
    service.pages = [[upsert('b', 2)], [upsert('c')]];
    service.cursorsExpired = true;
    let pulls = 0;
    await expect(phone((request) => (request.path.startsWith('/v1/sync/pull') && ++pulls === 3 ? Promise.reject(new Error('gone')) : service.wire(request))).pull()).rejects.toThrow(NoAnswer);
    const again = phone();
    expect(rows(again)).toEqual(['a', 'b']);
    await again.pull();
    expect(rows(again)).toEqual(['b', 'c']);
  });

  it('forgets a row that was removed', async () => {
    service.pages = [[upsert('a')], [{ kind: 'time-entry', id: 'a', change: 'removal' }]];
    const client = phone();
    await client.pull();
    expect(rows(client)).toEqual([]);
  });

  it('signs in again by itself when its session ended, with its outbox whole', async () => {
    const client = phone();
    client.note(HOUR);
    await client.push();
    service.endSession();
    client.note(HOUR);
    await client.push();
    expect([service.signIns, service.applied.length]).toEqual([2, 2]);
  });

  it('refreshes after a restart, and signs in when the answer to the refresh was lost', async () => {
    await phone().pull();
    await phone().pull();
    expect(service.signIns).toBe(2);
    await expect(phone(losing('/v1/sessions/refresh')).pull()).rejects.toThrow(NoAnswer);
    const [client, before] = [phone(), service.signIns];
    await client.pull();
    expect(service.signIns).toBe(before + 1);
  });

  it('uses a refresh token once when two requests find the session over at the same moment', async () => {
    const session = new Session(path.join(folder, 'session.jsonl'), service.wire, byPassword('crew@fernhollow.example', 'right'), () => performance.now());
    const pull = (): Promise<unknown> => session.send('GET', '/v1/sync/pull');
    await Promise.all([pull(), pull(), pull()]);
    service.expireAccess();
    await Promise.all([pull(), pull(), pull()]);
    expect([service.signIns, service.refused]).toEqual([2, 0]);
    session.close();
  });

  it('keeps its work when nothing opens a session any more, and says so', async () => {
    const client = phone(service.wire, 'wrong');
    client.note(HOUR);
    await expect(client.sync()).rejects.toThrow(SignedOut);
    expect(slept).toEqual([]);
    expect(client.waiting).toHaveLength(1);
  });

  it('waits longer after each failure, or as long as the service asks, and then comes through', async () => {
    let failures = 0;
    const client = phone((request) => {
      if (failures++ === 3) return Promise.resolve({ ...problem(503, 'unavailable'), headers: new Headers({ 'retry-after': '30' }) });
      return failures <= 3 ? Promise.reject(new Error('no signal')) : service.wire(request);
    });
    client.note(HOUR);
    await client.sync();
    expect(slept).toEqual([1_000, 2_000, 4_000, 30_000]);
    expect(service.applied).toHaveLength(1);
  });

  it('keeps its file small, and the same after it was written anew', async () => {
    const client = phone();
    for (let n = 0; n < 40; n++) {
      client.note(...Array.from({ length: 100 }, () => HOUR));
      await client.push();
    }
    client.note(HOUR);
    const file = path.join(folder, 'phone.jsonl');
    expect(statSync(file).size).toBeLessThan(300_000);
    expect(readFileSync(file, 'utf8')).not.toContain('"counter":17,');
    const again = phone();
    expect([ids(again.waiting), again.waiting[0]?.counter]).toEqual([ids(client.waiting), 4_001]);
  });
});
