import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { networkWire, type Wire } from '../../../examples/crew-client/index.js';
import { cutRequest } from './cut-request.js';
import { DailyWork } from './daily-work.js';
import { figuresOf } from './figures.js';
import { FaultyWire } from './faulty-wire.js';
import { compareHeld } from './held-hours.js';
import { Host } from './host.js';
import { compareJobs, compareRows, isWorkOfPhones, officeRevisions, readPhotos, wantedOn } from './judge.js';
import { Ledger } from './ledger.js';
import { losePhones } from './lost-phones.js';
import { Course, kill, pause, reassignPeople } from './mishaps.js';
import type { Figures, SimulationOptions } from './options.js';
import { drawPictures } from './pictures.js';
import { Random } from './random.js';
import { replay, touch } from './replay.js';
import type { SequentialModel } from './sequential-model.js';
import { SimulatedPhone } from './simulated-phone.js';
import { Turns } from './turns.js';
import { type Firm, firmNames, makeFirm, newCode, PASSWORD, type Worker } from './world.js';

/** One crew person in this many has two phones. */
const SECOND_PHONES = 5;
const MOST_ATTEMPTS_TO_CONVERGE = 100;
const IDLE_MS = 150;
const PICTURES = 30;

/** Runs a simulation from its seed. What was broken is in the figures' `violations`. */
export async function simulate(options: SimulationOptions, say: (line: string) => void): Promise<Figures> {
  const folder = mkdtempSync(path.join(tmpdir(), 'rillbook-simulation-'));
  const host = await Host.make();
  try {
    return await run(options, host, folder, say);
  } finally {
    await host.end();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function run(options: SimulationOptions, host: Host, folder: string, say: (line: string) => void): Promise<Figures> {
  const begun = performance.now();
  const random = new Random(`${options.seed} world`);
  let requests = 0;
  const wire: Wire = (request) => {
    requests++;
    return networkWire(host.url)(request);
  };
  const names = firmNames(options.companies);
  for (const { name, email } of names) await host.makeCompany(name, email, PASSWORD);
  await host.start();
  const ledger = new Ledger();
  const firms: Firm[] = [];
  const people = Math.ceil((options.phones * SECOND_PHONES) / (SECOND_PHONES + 1) / options.companies);
  for (const each of names) firms.push(await makeFirm(folder, wire, each, people, random));
  const phones = await makePhones(options, firms, (phone, of) => ({ ...of, folder, ledger, wire: new FaultyWire(wire, (request) => cutRequest(host.url, request), phone) }));
  const enrolled = phones.filter(({ hasCode }) => hasCode).length;
  say(`${phones.length} phones of ${firms.flatMap(({ workers }) => workers).length} people are at work, ${enrolled} of them enrolled.`);

  const course = new Course(() => ledger.noted.size, options.mutations, options.kills);
  const turns = new Turns(options.atOnce);
  const mishaps = Promise.all([
    reassignPeople(firms, new Random(`${options.seed} office`), course),
    losePhones(phones, new Random(`${options.seed} losses`), course),
    kill(host, options.kills, course),
    ...firms.map(({ work }) => work.live(course)),
  ]);
  await Promise.all(phones.map((phone) => liveOn(phone, turns, course)));
  const [reassignments, lostPhones] = await mishaps;

  say('The work is done; the signal is back.');
  for (const { wire: faulty } of phones) {
    await faulty.quiet();
    faulty.faulty = false;
  }
  await Promise.all(phones.map((phone) => turns.take(() => empty(phone, ledger))));
  const { model, rows, held } = await judge(ledger, firms);
  say(`${held} entries are held; the office lets them count.`);
  await releaseHeld(ledger, model, firms);
  const bytes = await readPhotos(ledger, model, firms, host.url);
  await Promise.all(phones.map((phone) => turns.take(() => requireConverged(phone, model, ledger))));
  for (const phone of phones) phone.close();
  for (const { office } of firms) office.close();
  return figuresOf({ options, begun, phones, firms, ledger, model, host, reassignments, enrolled, lostPhones, requests, rows, held, bytes });
}

/** Holds everything that the service has against the model, with hours held that came too late. */
async function judge(ledger: Ledger, firms: readonly Firm[]): Promise<{ model: SequentialModel; rows: number; held: number }> {
  const firmOf = new Map(firms.flatMap((firm) => firm.workers.map(({ id }) => [id, firm])));
  const revisions = (await Promise.all(firms.map(officeRevisions))).flat();
  const model = replay(ledger, revisions, ({ worker }) => firmOf.get(worker) as Firm);
  const { rows, hours } = await compareRows(ledger, model, firms);
  const held = compareHeld(ledger, hours, firms);
  await compareJobs(ledger, model.minutes(held), firms);
  return { model, rows, held: held.size };
}

/** When the office has looked at what was held, it counts like everything else, but for hours that nobody stopped. */
async function releaseHeld(ledger: Ledger, model: SequentialModel, firms: readonly Firm[]): Promise<void> {
  for (const firm of firms) {
    await firm.work.releaseAll();
    for (const made of await officeRevisions(firm)) if (made.revision > (model.rows.get(made.id)?.revision ?? 0)) touch(ledger, model, made);
  }
  await compareJobs(ledger, model.minutes(), firms);
}

type Makings = ConstructorParameters<typeof SimulatedPhone>[0];
type Equip = (random: Random, of: Pick<Makings, 'name' | 'worker' | 'random' | 'work' | 'code'>) => Makings;

async function makePhones(options: SimulationOptions, firms: readonly Firm[], equip: Equip): Promise<SimulatedPhone[]> {
  const workers = firms.flatMap((firm) => firm.workers);
  const seconds = workers.filter(({ role }) => role === 'crew');
  const owners: [Worker, boolean][] = [...workers.map((worker): [Worker, boolean] => [worker, false]), ...seconds.map((worker): [Worker, boolean] => [worker, true])];
  const pictures = await drawPictures(PICTURES, new Random(`${options.seed} pictures`));
  const phones: SimulatedPhone[] = [];
  for (const [n, [worker, second]] of owners.slice(0, options.phones).entries()) {
    const random = new Random(`${options.seed} phone ${n + 1}`);
    // One code at a time is good for a person, so of two phones one is signed in by password, as a third of the others are.
    const code = !second && n % 3 !== 0 ? await newCode(worker) : null;
    phones.push(new SimulatedPhone(equip(random, { name: `phone-${n + 1}`, worker, random, code, work: new DailyWork(worker, random, second, pictures) })));
  }
  return phones;
}

/** Works until all phones together have done enough. */
async function liveOn(phone: SimulatedPhone, turns: Turns, course: Course): Promise<void> {
  while (!course.done) {
    const worked = course.mayWork;
    const tried = await turns.take(() => phone.exclusively(() => {
      if (worked) phone.takeDown();
      return phone.tryToSync();
    }));
    if (tried !== 'through' || !worked) await pause(IDLE_MS);
  }
}

async function empty(phone: SimulatedPhone, ledger: Ledger): Promise<void> {
  for (let attempt = 0; attempt < MOST_ATTEMPTS_TO_CONVERGE && !((await phone.tryToSync()) === 'through' && phone.waiting === 0); attempt++) await pause(100);
  if (phone.waiting > 0) ledger.violate(`${phone.name} can't get rid of ${phone.waiting} mutations`);
}

/** The phone has what a new one would get, and of the crews' work exactly what the model says its person may see. */
async function requireConverged(phone: SimulatedPhone, model: SequentialModel, ledger: Ledger): Promise<void> {
  const [fresh, wanted] = [await phone.freshCopy(), wantedOn(model, phone.worker)];
  let found = differences(phone, fresh, wanted);
  // The feed stands still behind the oldest transaction that runs, be it only the database's own housekeeping.
  for (let attempt = 0; attempt < MOST_ATTEMPTS_TO_CONVERGE && found.length > 0; attempt++) {
    await pause(100);
    await phone.tryToSync();
    found = differences(phone, fresh, wanted);
  }
  for (const difference of found) ledger.violate(difference);
}

function differences(phone: SimulatedPhone, fresh: ReadonlyMap<string, string>, wanted: ReadonlyMap<string, number>): string[] {
  const rows = phone.rows();
  const found = new Map([...rows].filter(([key]) => isWorkOfPhones(key)).map(([key, row]) => [key, (JSON.parse(row) as [number])[0]]));
  return [
    ...[...new Set([...rows.keys(), ...fresh.keys()])].filter((key) => rows.get(key) !== fresh.get(key)).map((key) => `${phone.name} has of ${key} ${rows.get(key)}, and a new phone ${fresh.get(key)}`),
    ...[...new Set([...wanted.keys(), ...found.keys()])].filter((key) => wanted.get(key) !== found.get(key)).map((key) => `${phone.name} has revision ${found.get(key)} of ${key}, where the model has ${wanted.get(key)}`),
  ];
}
