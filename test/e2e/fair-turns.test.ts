import { FairTurns } from '../../src/platform/turns/fair-turns.js';

describe('turns', () => {
  it('go round: somebody with one thing waits for one of each other and not for all of theirs', async () => {
    const turns = new FairTurns(1);
    const done: string[] = [];
    const send = (whose: string, name: string): Promise<void> =>
      turns.take(whose, async () => {
        await new Promise((resolve) => setTimeout(resolve, 1));
        done.push(name);
      });
    const flood = Array.from({ length: 50 }, (_, i) => send('flooder', `flood ${i}`));
    await Promise.all([send('crew', 'photo'), send('lead', 'receipt'), ...flood]);
    expect(done.slice(0, 4)).toEqual(['flood 0', 'photo', 'receipt', 'flood 1']);
    expect(done).toHaveLength(52);
  });

  it('are handed on when one fails', async () => {
    const turns = new FairTurns(1);
    const failing = turns.take('crew', () => Promise.reject(new Error('broken')));
    const next = turns.take('crew', () => Promise.resolve('worked'));
    await expect(failing).rejects.toThrow('broken');
    expect(await next).toBe('worked');
  });
});
