import { mkdtempSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { LogFile } from '../../examples/crew-client/log-file.js';

describe('the file of a phone', () => {
  let folder: string;

  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'rillbook-phone-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('says so when the disk is full in the middle of a record, and keeps what is written before and after', () => {
    const name = path.join(folder, 'log.jsonl');
    let free = Infinity;
    const onSmallDisk = (descriptor: number, bytes: Buffer, from: number): number => {
      if (free === 0) throw new Error('no space is left');
      const took = writeSync(descriptor, bytes, from, Math.min(free, bytes.length - from));
      free -= took;
      return took;
    };
    const { file } = LogFile.open<{ n: number }>(name, onSmallDisk);
    file.append({ n: 1 });
    free = 3;
    expect(() => file.append({ n: 2 })).toThrow('no space');
    free = Infinity;
    file.append({ n: 3 });
    file.close();
    const { file: again, records } = LogFile.open<{ n: number }>(name);
    again.close();
    expect(records).toEqual([{ n: 1 }, { n: 3 }]);
  });
});
