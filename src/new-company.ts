import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { v7 as uuidv7 } from 'uuid';
import { createApp } from './create-app.js';
import { CompaniesService, CompanyBody } from './features/companies/index.js';
import { PeopleService, PersonBody } from './features/people/index.js';
import { PasswordBody, SetPassword } from './features/sessions/index.js';
import { openDatabase } from './open-database.js';
import type { Actor } from './platform/auth/actor.js';
import { readConfig } from './platform/config/config.js';
import { StartError } from './platform/config/start-error.js';
import { provision } from './platform/database/provision.js';
import { TenantDatabase } from './platform/database/tenant-database.js';
import { Problem } from './platform/http/problem.js';
import { validateAs } from './platform/http/validation.js';

const OPTIONS = {
  name: { type: 'string' },
  currency: { type: 'string' },
  'time-zone': { type: 'string' },
  locale: { type: 'string', default: 'en-US' },
  units: { type: 'string', default: 'us' },
  paper: { type: 'string', default: 'letter' },
  'sell-rate': { type: 'string', default: '0.00' },
  owner: { type: 'string' },
  email: { type: 'string' },
} as const;

const OPTION_OF = {
  company: { '/name': '--name', '/currency': '--currency', '/timeZone': '--time-zone', '/locale': '--locale', '/unitSystem': '--units', '/paperSize': '--paper', '/laborSellRate': '--sell-rate' },
  owner: { '/name': '--owner', '/email': '--email' },
};

const USAGE = `npm run new-company -- --name NAME --currency USD --time-zone America/Detroit --owner NAME --email ADDRESS
  [--locale en-US] [--units us|metric] [--paper letter|a4] [--sell-rate 68.00]
It asks for the owner's password, or reads it from standard input.`;

/** Makes a company and its owner, as the command line asks. A reason not to is one sentence and exit code 1. */
try {
  await makeCompany(await readInput());
} catch (error) {
  if (!(error instanceof StartError) && !(error instanceof Problem)) throw error;
  console.error(error instanceof Problem ? complaints(error) : error.message);
  process.exitCode = 1;
}

/** The detail of a problem only sums its errors up, so one or the other is said. */
function complaints({ detail, errors }: Problem, optionOf: Record<string, string> = {}): string {
  return errors.map((each) => `${optionOf[each.pointer] ?? each.pointer.slice(1)} ${each.detail}`).join('\n') || detail;
}

/** Checks what was given. The complaints name the options: the company and its owner both have a `name` behind them. */
async function checked<T extends object>(type: new () => T, given: Record<string, unknown>, optionOf: Record<string, string>): Promise<T> {
  try {
    return await validateAs(type, given);
  } catch (error) {
    throw error instanceof Problem ? new StartError(complaints(error, optionOf)) : error;
  }
}

interface Input {
  readonly company: CompanyBody;
  readonly owner: PersonBody;
  readonly password: PasswordBody;
}

async function readInput(): Promise<Input> {
  const given = readOptions();
  const company = await checked(CompanyBody, {
    name: given.name, currency: given.currency, timeZone: given['time-zone'], locale: given.locale, unitSystem: given.units, paperSize: given.paper,
    laborSellRate: given['sell-rate'], hourIncrement: '0.25', taxCategories: [], paymentTermsDays: 30,
  }, OPTION_OF.company);
  const owner = await checked(PersonBody, { name: given.owner, email: given.email, role: 'owner', hourlyWage: '0.00', burdenPercent: '0' }, OPTION_OF.owner);
  return { company, owner, password: await checked(PasswordBody, { password: await readPassword() }, {}) };
}

function readOptions() {
  try {
    return parseArgs({ options: OPTIONS, strict: true }).values;
  } catch (error) {
    throw new StartError(`${(error as Error).message}\n${USAGE}`);
  }
}

/** From the terminal, without showing it, or the first line of standard input. */
async function readPassword(): Promise<string> {
  const terminal = process.stdin.isTTY;
  const lines = createInterface({ input: process.stdin, output: process.stdout, terminal });
  if (terminal) {
    process.stdout.write('Password of the owner, 15 characters or more: ');
    // The line editor echoes through this method; there is no other way to keep it quiet.
    Object.assign(lines, { _writeToOutput: () => undefined });
  }
  const password = await new Promise<string>((resolve) => {
    lines.once('line', resolve);
    lines.once('close', () => resolve(''));
  });
  lines.close();
  if (terminal) process.stdout.write('\n');
  return password;
}

async function makeCompany({ company, owner, password }: Input): Promise<void> {
  const { url, server } = await openDatabase(readConfig(process.env, process.cwd()), (line) => console.log(line));
  let app: NestFastifyApplication | null = null;
  try {
    app = await createApp(await provision(url), 'warn');
    await app.init();
    const [companies, people, passwords, db] = [app.get(CompaniesService, { strict: false }), app.get(PeopleService, { strict: false }), app.get(SetPassword, { strict: false }), app.get(TenantDatabase)];
    const actor: Actor = { companyId: uuidv7(), personId: null, role: 'owner', sessionId: null };
    // All or nothing: a company without an owner could never be signed in to.
    await db.write(actor, async () => {
      await companies.create(company, actor.companyId);
      const { row } = await people.create(actor, owner);
      await passwords.execute(actor, row.id, password);
    });
    console.log(`${company.name} is there. ${owner.email} can sign in.`);
  } finally {
    await app?.close();
    await server?.stop();
  }
}
