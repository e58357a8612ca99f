import type { Actor, Role } from '../../platform/auth/actor.js';
import type { Clock } from '../../platform/clock/clock.js';
import type { DemoCalendar } from './demo-calendar.js';
import { demoId } from './demo-id.js';

/** A day on which somebody logged hours. */
export interface DayWorked {
  readonly person: string;
  /** Working days before the day the demonstration is made on. */
  readonly daysAgo: number;
}

/** What the steps share: whose company it is, which day is today, and the ids of what was made before. */
export class Scene {
  private readonly ids = new Map<string, string>();
  private readonly people = new Map<string, Actor>();
  private readonly worked = new Map<string, DayWorked>();

  /** @param service the service itself, acting for the demonstration company */
  constructor(
    readonly service: Actor,
    readonly calendar: DemoCalendar,
    private readonly clock: Clock,
  ) {}

  /** Chooses the id of something that is made at that moment. */
  newId(name: string, moment: Date): string {
    return this.note(name, demoId(moment, name));
  }

  /** Remembers an id that the service chose. */
  note(name: string, id: string): string {
    if (this.ids.has(name)) throw new Error(`The demonstration has two of ${name}.`);
    this.ids.set(name, id);
    return id;
  }

  id(name: string): string {
    const id = this.ids.get(name);
    if (id === undefined) throw new Error(`The demonstration has no ${name} yet.`);
    return id;
  }

  enter(key: string, personId: string, role: Role): void {
    this.people.set(key, { ...this.service, personId, role });
  }

  /** Somebody of the company, as an actor. */
  as(key: string): Actor {
    const actor = this.people.get(key);
    if (actor === undefined) throw new Error(`Nobody in the demonstration is called ${key}.`);
    return actor;
  }

  noteWorked(day: DayWorked): void {
    this.worked.set(`${day.person} ${day.daysAgo}`, { person: day.person, daysAgo: day.daysAgo });
  }

  /** Each day of each person once, in the order in which they were noted. */
  daysWorked(): DayWorked[] {
    return [...this.worked.values()];
  }

  /** Does the work as if it were that moment. */
  on<T>(moment: Date, work: () => Promise<T>): Promise<T> {
    return this.clock.asOf(moment, work);
  }
}
