import { type Course, pause } from './mishaps.js';
import type { Random } from './random.js';
import type { SimulatedPhone } from './simulated-phone.js';
import { newCode } from './world.js';

const PAUSE_MS = 100;
/** Of all phones, one in so many is lost in the course of the work. */
const PHONES_FOR_A_LOSS = 4;
const MOST_ATTEMPTS = 200;

/** How many phones were shut out, by whether somebody found them again. */
export interface LostPhones {
  found: number;
  gone: number;
}

/** Takes phones from people, for as long as there is work. Each has its phone shut out, and goes on with a new one. */
export async function losePhones(phones: readonly SimulatedPhone[], random: Random, course: Course): Promise<LostPhones> {
  const lost: LostPhones = { found: 0, gone: 0 };
  const losses = Math.ceil(phones.length / PHONES_FOR_A_LOSS);
  for (; !course.done; await pause(PAUSE_MS)) {
    const enrolled = phones.filter(({ isEnrolled }) => isEnrolled);
    const { found, gone } = lost;
    if (enrolled.length === 0 || course.progress < (found + gone + 1) / (losses + 1)) continue;
    const phone = random.pick(enrolled);
    if ((found + gone) % 2 === 0) {
      // Shut out in the middle of whatever it does: what became of its last push, only its outbox can tell.
      await revoke(phone);
      await phone.exclusively(() => takeAway(phone, true));
      lost.found++;
    } else {
      await phone.exclusively(async () => {
        if (!(await handIn(phone))) return;
        for (let n = 0; n < 3; n++) phone.takeDown();
        await revoke(phone);
        await takeAway(phone, false);
        lost.gone++;
      });
    }
  }
  return lost;
}

/** Nothing is under way and nothing waits: what is noted from now on was never sent. */
async function handIn(phone: SimulatedPhone): Promise<boolean> {
  const { wire } = phone;
  await wire.quiet();
  wire.faulty = false;
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
    if ((await phone.tryToSync()) === 'through' && phone.waiting === 0) break;
    await pause(PAUSE_MS);
  }
  wire.faulty = true;
  return phone.waiting === 0;
}

async function revoke({ worker }: SimulatedPhone): Promise<void> {
  const { office } = worker.company;
  const devices = await office.all<{ id: string; revokedAt: string | null }>(`/v1/devices?personId=${worker.id}`);
  for (const { id } of devices.filter(({ revokedAt }) => revokedAt === null)) await office.ask('POST', `/v1/devices/${id}/revoke`, { reason: 'Lost' });
}

/** Whoever has the phone goes on trying. */
async function takeAway(phone: SimulatedPhone, found: boolean): Promise<void> {
  let last = await phone.tryToSync();
  for (let attempt = 0; attempt < MOST_ATTEMPTS && last === 'failed'; attempt++) {
    await pause(PAUSE_MS);
    last = await phone.tryToSync();
  }
  if (last !== 'shut out') phone.complain(`was shut out, and its sync ${last === 'through' ? 'came through' : 'did not say so'}`);
  await phone.wire.quiet();
  phone.replace(await newCode(phone.worker), found);
}
