import type { CostBody } from '../../costs/index.js';
import type { PaymentBody } from '../../payments/index.js';
import type { CrewName } from './company.js';

/** What became of an accepted quote. Days are working days before the day the demonstration is made on. */
export interface DemoJob {
  readonly quote: string;
  readonly acceptedBy: string;
  readonly acceptedDaysAgo: number;
  /** None when nobody has begun. */
  readonly work?: DemoWork;
  /** Purchases besides the planned parts. */
  readonly purchases?: readonly DemoPurchase[];
  readonly bill?: DemoBill;
}

export interface DemoWork {
  readonly crew: CrewName;
  readonly startedDaysAgo: number;
  /** Hours taken for each planned hour. */
  readonly pace: number;
  /** Days after which the crew is not done yet; none when it worked until the job was finished. */
  readonly daysSoFar?: number;
  /** When somebody stayed after the others, and so came into overtime. */
  readonly late?: readonly DemoLate[];
  /** What the crew noted with the first hours of a cost code. */
  readonly notes?: Readonly<Record<string, string>>;
}

export interface DemoLate {
  readonly person: string;
  readonly daysAgo: number;
  readonly costCode: string;
  /** HH:MM; from the end of the crew's day. */
  readonly until: string;
  readonly note: string;
}

export interface DemoPurchase extends Pick<CostBody, 'costCode' | 'kind' | 'description' | 'supplier' | 'reference'> {
  readonly amount: string;
  readonly daysAgo: number;
}

export interface DemoBill {
  readonly issuedDaysAgo: number;
  readonly payments: readonly DemoPayment[];
}

export interface DemoPayment extends Pick<PaymentBody, 'method' | 'reference'> {
  readonly daysAgo: number;
  /** The part of what is still owed, in percent. */
  readonly percentOfBalance: number;
}
