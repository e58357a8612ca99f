import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { newDataFolder, postmasterPid, removeDataFolders } from '../../support/embedded-folders.js';
import { type ServiceProcess, startService } from '../../support/service-process.js';

const ROOT = path.resolve(import.meta.dirname, '../../..');

/** The service as `npm start` runs it, with its database, both of which can be killed. */
export class Host {
  serviceKills = 0;
  databaseKills = 0;
  private service: ServiceProcess | null = null;

  private constructor(private readonly folder: string) {}

  static async make(): Promise<Host> {
    return new Host(await newDataFolder());
  }

  /** Where it answers now; another port after each start, as after a move. */
  get url(): string {
    return this.service?.url ?? 'http://127.0.0.1:9';
  }

  async start(): Promise<void> {
    this.service = await startService({ RILLBOOK_DATA: this.folder, RILLBOOK_LOG_LEVEL: 'error' });
  }

  /** A company of its own, and its owner; before the start. */
  async makeCompany(name: string, email: string, password: string): Promise<void> {
    const args = ['--name', name, '--currency', 'USD', '--time-zone', 'America/Detroit', '--owner', `Owner of ${name}`, '--email', email];
    const command = spawn(process.execPath, ['scripts/new-company.mjs', ...args], { cwd: ROOT, env: { ...process.env, RILLBOOK_DATA: this.folder }, stdio: ['pipe', 'ignore', 'inherit'] });
    command.stdin.end(`${password}\n`);
    const [code] = (await once(command, 'exit')) as [number | null];
    if (code !== 0) throw new Error(`The company ${name} could not be made (${code}).`);
  }

  async killService(): Promise<void> {
    const { service } = this;
    if (service === null) return;
    this.service = null;
    this.serviceKills++;
    await service.end('SIGKILL');
    await this.start();
  }

  /** The service starts the database again by itself. */
  async killDatabase(): Promise<void> {
    this.databaseKills++;
    process.kill(await postmasterPid(this.folder), 'SIGKILL');
  }

  async end(): Promise<void> {
    await this.service?.end('SIGTERM');
    await removeDataFolders();
  }
}
