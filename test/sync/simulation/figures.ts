import { came } from '../../../examples/crew-client/index.js';
import type { Ledger, Noted } from './ledger.js';
import type { Host } from './host.js';
import type { LostPhones } from './lost-phones.js';
import type { Figures, SimulationOptions } from './options.js';
import type { SequentialModel } from './sequential-model.js';
import type { SimulatedPhone } from './simulated-phone.js';
import type { Firm } from './world.js';

interface Run {
  readonly options: SimulationOptions;
  /** By the clock that only runs forward. */
  readonly begun: number;
  readonly phones: readonly SimulatedPhone[];
  readonly firms: readonly Firm[];
  readonly ledger: Ledger;
  readonly model: SequentialModel;
  readonly host: Host;
  readonly reassignments: number;
  readonly enrolled: number;
  readonly lostPhones: LostPhones;
  readonly requests: number;
  readonly rows: number;
  readonly held: number;
  /** Of all photos. */
  readonly bytes: number;
}

export function figuresOf({ options, begun, phones, firms, ledger, model, host, reassignments, enrolled, lostPhones, requests, rows, held, bytes }: Run): Figures {
  const noted = [...ledger.noted.values()];
  const minutes = [...model.minutes().values()].reduce((sum, each) => sum + each, 0);
  const works = firms.map(({ work }) => work);
  return {
    seed: options.seed,
    seconds: Math.round((performance.now() - begun) / 100) / 10,
    phones: phones.length,
    people: sumOf(firms, ({ workers }) => workers.length),
    mutations: noted.length,
    outcomes: tally(noted.map(wordFor)),
    faults: tally(phones.flatMap(({ wire: { met } }) => [...met].flatMap(([fault, times]) => Array.from({ length: times }, () => fault)))),
    deaths: sumOf(phones, ({ deaths }) => deaths),
    kills: { service: host.serviceKills, database: host.databaseKills },
    reassignments,
    devices: { enrolled, ...lostPhones },
    lost: noted.filter(({ lost }) => lost).length,
    office: {
      approvals: sumOf(works, ({ approvals }) => approvals),
      locks: sumOf(works, ({ lockedDays }) => lockedDays.count),
      closedJobs: sumOf(works, ({ closedJobs }) => closedJobs.count),
      released: sumOf(works, ({ released }) => released.size),
    },
    photos: { count: model.of('attachment').length, bytes },
    requests,
    pages: sumOf(phones, ({ pages }) => pages),
    items: sumOf(phones, ({ items }) => items),
    rows,
    hours: minutes / 60,
    held,
    violations: ledger.violations,
  };
}

function wordFor({ outcome, lost }: Noted): string {
  if (outcome === null) return lost ? 'lost with its phone' : 'none';
  return `${came(outcome)}${outcome.outcome === 'duplicate' ? ', told again' : ''}`;
}

function sumOf<T>(list: readonly T[], number: (item: T) => number): number {
  return list.reduce((sum, item) => sum + number(item), 0);
}

function tally(words: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const word of words) counts[word] = (counts[word] ?? 0) + 1;
  return counts;
}
