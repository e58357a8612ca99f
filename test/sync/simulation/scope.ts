import type { PulledItem } from '../../../examples/crew-client/index.js';
import type { PhoneMakings } from './simulated-phone.js';

/** Names of fields with the company's money in them; none may ever reach a crew's phone. */
const MONEY = /"(\w*([pP]rice|[wW]age|[bB]urden|[aA]mount|[mM]argin|laborCost|contractT\w+|unitCost))":/;

/** Every item that reaches a phone is one that its person may see, at some moment of the request; else the ledger hears of it. */
export function requireAllowed({ kind, id, value }: PulledItem, { name, worker, wire, ledger }: Pick<PhoneMakings, 'name' | 'worker' | 'wire' | 'ledger'>): void {
  const { company, role } = worker;
  const row = value as { jobId?: string; personId?: string; subject?: { id: string } };
  const job = kind === 'job' ? id : row.jobId ?? row.subject?.id;
  const own = kind === 'time-entry' && row.personId === worker.id;
  const where = `${name} (${role}) got ${kind} ${id}`;
  if (job !== undefined && !own && !company.assignments.mayHaveBeenOn(worker.id, job, wire.sentAt, Date.now())) ledger.violate(`${where} of a job whose crew its person was not on`);
  if (kind === 'time-entry' && role === 'crew' && !own) ledger.violate(`${where}, an hour of somebody else`);
  if (MONEY.test(JSON.stringify(value))) ledger.violate(`${where} with money in it`);
}
