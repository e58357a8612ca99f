import type { LeakRate } from './bucket-test.js';

interface Tested extends LeakRate {
  readonly pumpRunning: boolean;
}

/** What bucket tests with the pump on and off say together, and what is wrong with them. */
export function compareLeaks(tested: readonly Tested[]): string[] {
  const found: string[] = [];
  for (const { leakM3PerDay, uncertaintyM3PerDay, scattered, pumpRunning } of tested) {
    const state = pumpRunning ? 'With the pump on' : 'With the pump off';
    if (leakM3PerDay < -uncertaintyM3PerDay) found.push(`${state} the pond gained water against the bucket: rain, a refill or an inflow spoiled the test; a leak can't be below 0.`);
    else if (leakM3PerDay <= uncertaintyM3PerDay) found.push(`${state} no leak is shown, but one up to the uncertainty may be there; a longer test tells more.`);
    if (scattered) found.push(`${state} the tests disagree by more than their marks explain: look for wind, splash, rain or a leak that depends on the level.`);
  }
  const [off, on] = [tested.find(({ pumpRunning }) => !pumpRunning), tested.find(({ pumpRunning }) => pumpRunning)];
  if (off === undefined || on === undefined) {
    found.push('Test with the pump on and with it off: the difference is what stream, waterfall and pipes lose, splash included.');
    return found;
  }
  const difference = on.leakM3PerDay - off.leakM3PerDay;
  const uncertainty = Math.sqrt(on.uncertaintyM3PerDay ** 2 + off.uncertaintyM3PerDay ** 2);
  found.push(
    difference > uncertainty
      ? 'The pond loses more with the pump on: look along stream, waterfall and pipes, and allow for splash.'
      : 'The tests with the pump on and off don\'t differ by more than their uncertainty: nothing shows that stream or pipes leak.',
  );
  return found;
}
