import type { Wire, WireAnswer, WireRequest } from '../../../examples/crew-client/index.js';
import type { Random } from './random.js';

/** How often each thing goes wrong, of all requests. */
export const FAULTS = {
  'request dropped': 0.06,
  'answer dropped': 0.06,
  'request sent twice': 0.05,
  'request arrives after it was given up': 0.04,
  'answer cut off': 0.05,
  'request cut off': 0.02,
  'phone dies before it sends': 0.01,
  'phone dies before it knows the answer': 0.03,
} as const;

export type Fault = keyof typeof FAULTS;

const LONGEST_DELAY_MS = 400;

/** A network in a valley, between one phone and the service. */
export class FaultyWire {
  /** Off: carries everything faithfully. */
  faulty = true;
  /** The phone died over the last request. */
  died = false;
  /** When the request went out whose answer came last. */
  sentAt = 0;
  readonly met = new Map<Fault, number>();
  private readonly late: Promise<unknown>[] = [];

  constructor(
    private readonly wire: Wire,
    private readonly cut: (request: WireRequest) => Promise<void>,
    private readonly random: Random,
  ) {}

  readonly carry: Wire = (request) => {
    this.sentAt = Date.now();
    const fault = this.faulty ? this.draw() : null;
    if (fault === null) return this.wire(request);
    this.met.set(fault, (this.met.get(fault) ?? 0) + 1);
    return this.meet(fault, request);
  };

  /** Waits for what is still under way. */
  async quiet(): Promise<void> {
    await Promise.all(this.late.splice(0));
  }

  private draw(): Fault | null {
    let drawn = this.random.next();
    for (const [fault, probability] of Object.entries(FAULTS)) {
      if (drawn < probability) return fault as Fault;
      drawn -= probability;
    }
    return null;
  }

  private async meet(fault: Fault, request: WireRequest): Promise<WireAnswer> {
    switch (fault) {
      case 'request dropped':
        throw new Error(fault);
      case 'phone dies before it sends':
        this.died = true;
        throw new Error(fault);
      case 'request cut off':
        await this.cut(request);
        throw new Error(fault);
      case 'request sent twice': {
        const both = await Promise.all([this.wire(request), this.wire(request)]);
        return this.random.pick(both);
      }
      case 'request arrives after it was given up': {
        const delay = this.random.between(1, LONGEST_DELAY_MS);
        this.late.push(new Promise((resolve) => setTimeout(resolve, delay)).then(() => this.wire(request)).catch(() => undefined));
        throw new Error(fault);
      }
      case 'answer dropped':
      case 'phone dies before it knows the answer':
        this.died = fault !== 'answer dropped';
        await this.wire(request);
        throw new Error(fault);
      case 'answer cut off': {
        const answer = await this.wire(request);
        return { ...answer, text: answer.text.slice(0, this.random.between(0, Math.max(0, answer.text.length - 1))) };
      }
    }
  }
}
