import { Decimal } from '../../domain/decimal.js';
import { type MoneyBody, toMoneyBody } from '../../platform/http/fields/index.js';
import { inMinutes } from '../../domain/worktime/week/index.js';
import type { WaitingWork } from '../time-entries/index.js';
import type { EntryPiece } from './entry-pieces.js';
import type { PersonWeek } from './person-weeks.js';
import { burdenWorking, overtimeWorking, premiumWorking, straightWorking, workedWorking } from './work-week.working.js';
import type { WorkWeekView } from './work-weeks.dto.js';

export function toWorkWeekView(of: PersonWeek<EntryPiece>, currency: string, waiting?: WaitingWork): WorkWeekView {
  const money = (amount: Decimal): MoneyBody => toMoneyBody(amount, currency);
  const { week, labor } = of;
  const shown = ({ entryId, jobId, costCode, milliseconds, cost }: Share) => ({ entryId, jobId, costCode, hours: inHours(inMinutes(milliseconds)), cost: money(cost) });
  return {
    personId: of.personId,
    firstDay: week.firstDay,
    lastDay: week.lastDay,
    startsAt: week.startsAt.toISOString(),
    endsAt: week.endsAt.toISOString(),
    worked: { hours: inHours(labor.minutes), working: workedWorking(of) },
    overtime: { hours: inHours(labor.overtimeMinutes), working: overtimeWorking(of) },
    straightPay: { amount: money(labor.straightPay), working: straightWorking(of, currency) },
    regularRate: labor.regularRate?.toDecimalPlaces(6).toFixed() ?? null,
    premium: { amount: money(labor.premium), working: premiumWorking(of, currency) },
    burden: labor.burden.map((one) => ({ code: one.component?.code ?? null, amount: money(one.amount), working: burdenWorking(of, one, currency) })),
    total: money(labor.total),
    byCostCode: summed(of, (share) => `${share.jobId} ${share.costCode}`).map(shown).map(({ entryId: _, ...share }) => share),
    byEntry: summed(of, (share) => share.entryId).map(shown),
    warnings: waiting === undefined ? [] : waitingWarnings(waiting),
  };
}

/** Whoever pays by the week must see that it is not all there yet. */
function waitingWarnings({ held, running }: WaitingWork): string[] {
  return [
    ...(held > 0 ? [`${held === 1 ? 'An entry of this week is held and counts' : `${held} entries of this week are held and count`} for nothing until the office releases ${held === 1 ? 'it' : 'them'}.`] : []),
    ...(running > 0 ? ['Hours that began this week run still and count for nothing until they are stopped.'] : []),
  ];
}

interface Share {
  readonly entryId: string;
  readonly jobId: string;
  readonly costCode: string;
  readonly milliseconds: number;
  readonly cost: Decimal;
}

function summed({ pieces, shares }: PersonWeek<EntryPiece>, key: (share: Share) => string): Share[] {
  const sums = new Map<string, Share>();
  pieces.forEach(({ entryId, jobId, costCode, milliseconds }, index) => {
    const share = { entryId, jobId, costCode, milliseconds, cost: shares[index] ?? new Decimal(0) };
    const before = sums.get(key(share));
    sums.set(key(share), before === undefined ? share : { ...before, milliseconds: before.milliseconds + milliseconds, cost: before.cost.plus(share.cost) });
  });
  return [...sums.values()];
}

/** A third of an hour has no end in decimals; four of them are a third of a second. */
function inHours(minutes: Decimal): string {
  return minutes.div(60).toDecimalPlaces(4).toFixed();
}
