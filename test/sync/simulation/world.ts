import type { Wire } from '../../../examples/crew-client/index.js';
import { Assignments } from './assignments.js';
import { Office } from './office.js';
import { OfficeWork } from './office-work.js';
import type { Random } from './random.js';

export const PASSWORD = 'seven herons on a mossy ledge';
export const COST_CODES = ['cleanout', 'edge', 'hauling', 'travel'] as const;
const CREW_OF_A_LEAD = 4;
const JOBS_OF_A_PERSON = 2;

export interface Worker {
  readonly id: string;
  readonly email: string;
  readonly role: 'crew-lead' | 'crew';
  readonly company: Firm;
  /** Whom a lead logs for. */
  readonly crew: Worker[];
}

export interface Firm {
  readonly name: string;
  /** The owner's. */
  readonly email: string;
  readonly office: Office;
  readonly work: OfficeWork;
  readonly jobs: readonly string[];
  readonly workers: Worker[];
  readonly assignments: Assignments;
}

/** What a company is called, and how its owner signs in. */
export function firmNames(count: number): { name: string; email: string }[] {
  return Array.from({ length: count }, (_, n) => ({ name: `Sallow Brook Ponds ${n + 1}`, email: `owner-${n + 1}@sallowbrook.example` }));
}

/** A company with jobs and people, made through the public API. */
export async function makeFirm(folder: string, wire: Wire, names: { name: string; email: string }, workers: number, random: Random): Promise<Firm> {
  const office = new Office(folder, wire, names.email, PASSWORD);
  const jobs: string[] = [];
  for (let n = 0; n < Math.max(3, Math.ceil(workers / 4)); n++) jobs.push(await makeJob(office, random));
  const parts = { ...names, office, jobs, workers: [], assignments: new Assignments() };
  const firm: Firm = { ...parts, work: new OfficeWork(parts, random) };
  // Photos come out as they went in, so that they can be told to be the same.
  await office.change('/v1/company', { keepPhotoLocation: true });
  let lead: Worker | null = null;
  for (let n = 0; n < workers; n++) {
    const worker = await makeWorker(firm, n % (CREW_OF_A_LEAD + 1) === 0 ? 'crew-lead' : 'crew', random);
    if (worker.role === 'crew-lead') lead = worker;
    else lead?.crew.push(worker);
  }
  for (const job of jobs) await setCrew(firm, job, firm.workers.filter(() => random.chance(JOBS_OF_A_PERSON / jobs.length)));
  return firm;
}

async function makeJob(office: Office, random: Random): Promise<string> {
  const id = random.id();
  const money = (amount: string) => ({ amount, currency: 'USD' });
  const other = ['cleanout', 'edge', 'hauling'].map((costCode) => ({ description: 'Work by the piece', quantity: '1', unitPrice: money('900.00'), unitCost: money('500.00'), costCode }));
  await office.ask('POST', '/v1/quotes', { id, title: `Pond ${id.slice(-4)}`, other });
  await office.ask('POST', `/v1/quotes/${id}/issue`, {});
  const acceptance = { acceptedBy: 'Marta Ellingsworth', acceptedOn: new Date().toISOString().slice(0, 10) };
  return (await office.ask<{ jobId: string }>('POST', `/v1/quotes/${id}/acceptance`, acceptance)).jobId;
}

async function makeWorker(firm: Firm, role: Worker['role'], random: Random): Promise<Worker> {
  const id = random.id();
  const worker: Worker = { id, email: `${id}@sallowbrook.example`, role, company: firm, crew: [] };
  await firm.office.ask('POST', '/v1/people', { id, name: `Test ${role}`, email: worker.email, role, hourlyWage: '24.00', burdenPercent: '20' });
  await firm.office.ask('POST', `/v1/people/${id}/password`, { password: PASSWORD });
  firm.workers.push(worker);
  return worker;
}

/** A code with which a phone of this person is enrolled; it makes those before worthless. */
export async function newCode({ id, company }: Worker): Promise<string> {
  return (await company.office.ask<{ code: string }>('POST', '/v1/device-enrolments', { personId: id })).code;
}

/** Puts these people on the job's crew, and takes everybody else off it. */
export async function setCrew(firm: Firm, job: string, workers: readonly Worker[]): Promise<void> {
  const { assignments } = firm;
  for (const { id } of workers) assignments.joins(id, job);
  await firm.office.ask('PUT', `/v1/jobs/${job}/crew`, { personIds: workers.map(({ id }) => id) });
  for (const { id } of firm.workers) if (!workers.some((worker) => worker.id === id)) assignments.left(id, job);
}

/** Moves one person onto a job or off it. */
export async function reassign(firm: Firm, random: Random): Promise<void> {
  const [job, moved] = [random.pick(firm.jobs), random.pick(firm.workers)];
  const { assignments } = firm;
  await setCrew(firm, job, firm.workers.filter((worker) => assignments.isOn(worker.id, job) !== (worker === moved)));
}
