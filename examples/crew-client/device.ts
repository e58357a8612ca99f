import { randomBytes } from 'node:crypto';
import path from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import type { SessionAnswer } from './contract.js';
import { LogFile } from './log-file.js';
import type { SignIn } from './session.js';
import { exchange, type Wire } from './wire.js';

const SECRET_BYTES = 32;
/** What the picture of a code holds before the code. */
const PICTURE = 'RILLBOOK:DEVICE/';

interface Enrolment {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly secret: string;
}

type DeviceRecord =
  | { readonly event: 'code'; readonly enrolment: Enrolment }
  | { readonly event: 'enrolled'; readonly credential: string }
  | { readonly event: 'shut-out'; readonly because: string };

/**
 * What makes this phone a device of its person: a code that a lead showed, then a credential. Id and secret are made
 * here and on the disk before they are sent, so that the enrolment can be sent again when its answer was lost; else
 * the code would be used up, and nobody would have the credential.
 */
export class Device implements SignIn {
  private readonly file: LogFile<DeviceRecord>;
  private enrolment: Enrolment | null = null;
  private credential: string | null = null;
  private because: string | null = null;

  /** @param folder that of the phone */
  constructor(
    folder: string,
    private readonly newId: () => string = uuidv7,
  ) {
    const { file, records } = LogFile.open<DeviceRecord>(path.join(folder, 'device.jsonl'));
    this.file = file;
    for (const record of records) this.apply(record);
  }

  get isEnrolled(): boolean {
    return this.credential !== null;
  }

  get shutOutBecause(): string | null {
    return this.because;
  }

  /** Takes a code, scanned or typed; the next sign-in enrols with it. The same code again changes nothing. */
  take(scanned: string, name: string): void {
    const code = scanned.startsWith(PICTURE) ? scanned.slice(PICTURE.length) : scanned;
    if (this.enrolment?.code === code) return;
    this.write({ event: 'code', enrolment: { id: this.newId(), code, name, secret: randomBytes(SECRET_BYTES).toString('base64url') } });
  }

  /** Enrols if that was not done yet, and opens a session. @throws NoAnswer or Refused; Error when there is no code */
  async open(wire: Wire): Promise<SessionAnswer> {
    const credential = this.credential ?? (await this.enrol(wire));
    return exchange<SessionAnswer>(wire, 'POST', '/v1/sessions/device', { credential });
  }

  shutOut(because: string): void {
    this.write({ event: 'shut-out', because });
  }

  close(): void {
    this.file.close();
  }

  private async enrol(wire: Wire): Promise<string> {
    if (this.enrolment === null) throw new Error('The phone has no code yet.');
    const { credential } = await exchange<{ credential: string }>(wire, 'POST', '/v1/devices', this.enrolment);
    this.write({ event: 'enrolled', credential });
    return credential;
  }

  private write(record: DeviceRecord): void {
    this.file.append(record);
    this.apply(record);
  }

  private apply(record: DeviceRecord): void {
    if (record.event === 'enrolled') this.credential = record.credential;
    else if (record.event === 'shut-out') this.because = record.because;
    else [this.enrolment, this.credential, this.because] = [record.enrolment, null, null];
  }
}
