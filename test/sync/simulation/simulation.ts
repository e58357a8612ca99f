import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { networkWire, type Wire } from '../../../examples/crew-client/index.js';
import { Host } from './host.js';
import { compare, isWorkOfPhones, replay, wantedOn } from './judge.js';
import { came, Ledger } from './ledger.js';
import { Course, kill, pause, reassignPeople } from './mishaps.js';
import type { Figures, SimulationOptions } from './options.js';
import { Random } from './random.js';
import { SimulatedPhone } from './simulated-phone.js';
import { Turns } from './turns.js';
import { type Firm, firmNames, makeFirm, PASSWORD, type Worker } from './world.js';

/** One crew person in this many has two phones. */
const SECOND_PHONES = 5;
const MOST_ATTEMPTS_TO_CONVERGE = 100;
const IDLE_MS = 150;

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
  const phones = makePhones(options, firms, folder, wire, ledger);
  say(`${phones.length} phones of ${firms.flatMap(({ workers }) => workers).length} people are at work.`);

  const course = new Course(() => ledger.noted.size, options.mutations, options.kills);
  const turns = new Turns(options.atOnce);
  const killing = kill(host, options.kills, course);
  const moving = reassignPeople(firms, new Random(`${options.seed} office`), course);
  await Promise.all(phones.map((phone) => liveOn(phone, turns, course)));
  const reassignments = await moving;
  await killing;

  say('The work is done; the signal is back.');
  for (const { wire: faulty } of phones) {
    await faulty.quiet();
    faulty.faulty = false;
  }
  await Promise.all(phones.map((phone) => turns.take(() => empty(phone, ledger))));
  const model = replay(ledger);
  const { rows, minutes } = await compare(ledger, model, firms);
  await Promise.all(phones.map((phone) => turns.take(() => requireConverged(phone, folder, model, ledger))));
  for (const phone of phones) phone.close();
  for (const { office } of firms) office.close();

  const outcomes = [...ledger.noted.values()].map(({ outcome }) => (outcome === null ? 'none' : `${came(outcome)}${outcome.outcome === 'duplicate' ? ', told again' : ''}`));
  return {
    seed: options.seed,
    seconds: Math.round((performance.now() - begun) / 100) / 10,
    phones: phones.length,
    people: firms.flatMap(({ workers }) => workers).length,
    mutations: ledger.noted.size,
    outcomes: tally(outcomes),
    faults: tally(phones.flatMap(({ wire: faulty }) => [...faulty.met].flatMap(([fault, times]) => Array.from({ length: times }, () => fault)))),
    deaths: phones.reduce((sum, { deaths }) => sum + deaths, 0),
    kills: { service: host.serviceKills, database: host.databaseKills },
    reassignments,
    requests,
    pages: phones.reduce((sum, { pages }) => sum + pages, 0),
    items: phones.reduce((sum, { items }) => sum + items, 0),
    rows,
    hours: minutes / 60,
    violations: ledger.violations,
  };
}

function makePhones(options: SimulationOptions, firms: readonly Firm[], folder: string, wire: Wire, ledger: Ledger): SimulatedPhone[] {
  const workers = firms.flatMap((firm) => firm.workers);
  const seconds = workers.filter(({ role }) => role === 'crew');
  const owners: [Worker, boolean][] = [...workers.map((worker): [Worker, boolean] => [worker, false]), ...seconds.map((worker): [Worker, boolean] => [worker, true])];
  return owners.slice(0, options.phones).map(([worker, second], n) => new SimulatedPhone(`phone-${n + 1}`, worker, second, folder, wire, new Random(`${options.seed} phone ${n + 1}`), ledger));
}

/** Works until all phones together have done enough. */
async function liveOn(phone: SimulatedPhone, turns: Turns, course: Course): Promise<void> {
  while (!course.done) {
    const worked = course.mayWork;
    if (worked) phone.takeDown();
    if (!(await turns.take(() => phone.tryToSync())) || !worked) await pause(IDLE_MS);
  }
}

async function empty(phone: SimulatedPhone, ledger: Ledger): Promise<void> {
  for (let attempt = 0; attempt < MOST_ATTEMPTS_TO_CONVERGE && !((await phone.tryToSync()) && phone.waiting === 0); attempt++) await pause(100);
  if (phone.waiting > 0) ledger.violate(`${phone.name} can't get rid of ${phone.waiting} mutations`);
}

/** The phone has what a new one would get, and of the crews' work exactly what the model says its person may see. */
async function requireConverged(phone: SimulatedPhone, folder: string, model: ReturnType<typeof replay>, ledger: Ledger): Promise<void> {
  const [fresh, wanted] = [await phone.freshCopy(folder), wantedOn(model, phone.worker)];
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

function tally(words: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const word of words) counts[word] = (counts[word] ?? 0) + 1;
  return counts;
}
