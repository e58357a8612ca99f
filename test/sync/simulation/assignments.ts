interface Spell {
  readonly from: number;
  until: number;
}

/**
 * Who was on which job's crew, and when, as far as the office can know it: from before it asked the service to put
 * somebody on, until after the service said that the person is off. Outside of these spells nothing of the job may
 * reach the person's phone.
 */
export class Assignments {
  private readonly spells = new Map<string, Spell[]>();

  joins(person: string, job: string, from = Date.now()): void {
    const spells = this.of(person, job);
    if (spells.at(-1)?.until !== Infinity) spells.push({ from, until: Infinity });
  }

  left(person: string, job: string, until = Date.now()): void {
    const last = this.of(person, job).at(-1);
    if (last !== undefined && last.until === Infinity) last.until = until;
  }

  isOn(person: string, job: string): boolean {
    return this.of(person, job).at(-1)?.until === Infinity;
  }

  /** Whether the person may have been on the crew at some moment of this time. */
  mayHaveBeenOn(person: string, job: string, since: number, until: number): boolean {
    return this.of(person, job).some((spell) => spell.from <= until && spell.until >= since);
  }

  private of(person: string, job: string): Spell[] {
    const key = `${person} ${job}`;
    const there = this.spells.get(key);
    if (there !== undefined) return there;
    const made: Spell[] = [];
    this.spells.set(key, made);
    return made;
  }
}
