import { LogFile } from './log-file.js';
import { type PhoneRecord, PhoneState } from './phone-state.js';

const SMALLEST_TO_COMPACT = 256 * 1024;

/** The phone's memory: its state, and the file from which it is built again after the phone died. */
export class PhoneStore {
  readonly state = new PhoneState();
  private readonly file: LogFile<PhoneRecord>;
  private compactAt = SMALLEST_TO_COMPACT;

  /** @param newId makes the phone's own id, when the file is new */
  constructor(name: string, newId: () => string) {
    const { file, records } = LogFile.open<PhoneRecord>(name);
    this.file = file;
    for (const record of records) this.state.apply(record);
    if (this.state.clientId === '') this.write({ event: 'snapshot', state: { ...this.state.snapshot(), clientId: newId() } });
    this.compactAt = Math.max(SMALLEST_TO_COMPACT, 2 * file.size);
  }

  /** On the disk first: what the state says must never be more than what a restart would find. */
  write(record: PhoneRecord): void {
    this.file.append(record);
    this.state.apply(record);
    if (this.file.size < this.compactAt) return;
    this.file.replace([{ event: 'snapshot', state: this.state.snapshot() }]);
    this.compactAt = Math.max(SMALLEST_TO_COMPACT, 2 * this.file.size);
  }

  close(): void {
    this.file.close();
  }
}
