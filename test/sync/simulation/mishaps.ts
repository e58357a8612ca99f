import type { Host } from './host.js';
import type { Random } from './random.js';
import { type Firm, reassign } from './world.js';

/** The database's supervisor gives up after five crashes within a minute, rightly: so they come further apart. */
const BETWEEN_DATABASE_KILLS_MS = 15_000;
const PAUSE_MS = 150;

/**
 * How far the work is. It halts before each kill until that has happened: phones that can note a day's work in a moment
 * would else be done before the service is back.
 */
export class Course {
  private stage = 1;

  constructor(
    private readonly noted: () => number,
    private readonly mutations: number,
    private readonly kills: number,
  ) {}

  get mayWork(): boolean {
    return this.noted() < (this.mutations * this.stage) / (this.kills + 1);
  }

  /** From 0 to 1. */
  get progress(): number {
    return this.noted() / this.mutations;
  }

  get done(): boolean {
    return this.stage > this.kills && !this.mayWork;
  }

  killed(): void {
    this.stage++;
  }
}

/** Kills the service and the database by turns, evenly over the work. */
export async function kill(host: Host, kills: number, course: Course): Promise<void> {
  let lastOfDatabase = -Infinity;
  for (let done = 0; done < kills; done++) {
    while (course.mayWork) await pause(10);
    if (done % 2 === 0) await host.killService();
    else {
      await pause(Math.max(0, lastOfDatabase + BETWEEN_DATABASE_KILLS_MS - performance.now()));
      lastOfDatabase = performance.now();
      await host.killDatabase();
    }
    course.killed();
  }
}

/** Moves people between jobs for as long as there is work. @returns how many times */
export async function reassignPeople(firms: readonly Firm[], random: Random, course: Course): Promise<number> {
  let moves = 0;
  for (; !course.done; moves++) {
    await reassign(random.pick(firms), random);
    await pause(PAUSE_MS);
  }
  return moves;
}

export function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
