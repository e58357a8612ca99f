export interface SimulationOptions {
  readonly seed: string;
  readonly phones: number;
  readonly mutations: number;
  /** Of the service and of its database, by turns. */
  readonly kills: number;
  readonly companies: number;
  /** Phones that send at the same moment; 1 makes a run that repeats itself step by step. */
  readonly atOnce: number;
}

export const SHORT: Omit<SimulationOptions, 'seed'> = { phones: 10, mutations: 400, kills: 2, companies: 1, atOnce: 6 };

export interface Figures {
  readonly seed: string;
  readonly seconds: number;
  readonly phones: number;
  readonly people: number;
  readonly mutations: number;
  /** Final outcomes, and how many of them were told as a repetition. */
  readonly outcomes: Readonly<Record<string, number>>;
  readonly faults: Readonly<Record<string, number>>;
  readonly deaths: number;
  readonly kills: { readonly service: number; readonly database: number };
  readonly reassignments: number;
  /** Phones that were enrolled in the beginning, and those that were shut out. */
  readonly devices: { readonly enrolled: number; readonly found: number; readonly gone: number };
  /** Mutations that were never sent, since their phone was gone for good. */
  readonly lost: number;
  readonly office: { readonly approvals: number; readonly locks: number; readonly closedJobs: number; readonly released: number };
  readonly photos: { readonly count: number; readonly bytes: number };
  readonly requests: number;
  readonly pages: number;
  readonly items: number;
  /** Made by phones, as the office lists them. */
  readonly rows: number;
  readonly hours: number;
  /** Entries that were held when all had come. */
  readonly held: number;
  readonly violations: readonly string[];
}
