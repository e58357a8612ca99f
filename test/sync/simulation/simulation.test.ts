import { randomBytes } from 'node:crypto';
import { SHORT } from './options.js';
import { simulate } from './simulation.js';

// A failing seed is run again with: npm run simulate -- --seed …
const seed = process.env['RILLBOOK_TEST_SEED'] ?? randomBytes(4).toString('hex');

describe('phones in a valley with one bar of signal', () => {
  it(`converge with nothing lost, nothing twice and nothing leaked, though everything is killed (seed ${seed})`, async () => {
    const figures = await simulate({ ...SHORT, seed }, () => undefined);
    expect(figures.violations).toEqual([]);
    // A run in which nothing went wrong would prove nothing.
    expect(figures.kills).toEqual({ service: 1, database: 1 });
    expect(figures.deaths).toBeGreaterThan(0);
    expect(Object.keys(figures.faults).length).toBeGreaterThan(4);
    expect(figures.outcomes['applied, told again']).toBeGreaterThan(0);
    expect(figures.reassignments).toBeGreaterThan(0);
    expect(figures.devices.found).toBeGreaterThan(0);
    expect(figures.photos.count).toBeGreaterThan(0);
    expect(figures.held).toBeGreaterThan(0);
  }, 480_000);
});
