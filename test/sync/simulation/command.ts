import { randomBytes } from 'node:crypto';
import { parseArgs } from 'node:util';
import { SHORT } from './options.js';
import { simulate } from './simulation.js';

const { values } = parseArgs({
  options: {
    phones: { type: 'string', default: String(SHORT.phones) },
    mutations: { type: 'string', default: String(SHORT.mutations) },
    kills: { type: 'string', default: String(SHORT.kills) },
    companies: { type: 'string', default: String(SHORT.companies) },
    'at-once': { type: 'string', default: String(SHORT.atOnce) },
    seed: { type: 'string', default: randomBytes(4).toString('hex') },
  },
});

const count = (name: 'phones' | 'mutations' | 'kills' | 'companies' | 'at-once', least: number): number => {
  const number = Number(values[name]);
  if (Number.isInteger(number) && number >= least) return number;
  console.error(`--${name} takes a whole number, ${least} or more.`);
  process.exit(2);
};

console.log(`Seed ${values.seed}. The same seed and numbers make the phones do the same again: --seed ${values.seed}`);
const options = { seed: values.seed, phones: count('phones', 1), mutations: count('mutations', 1), kills: count('kills', 0), companies: count('companies', 1), atOnce: count('at-once', 1) };
const figures = await simulate(options, (line) => console.log(line));
console.log(JSON.stringify(figures, null, 2));
console.log(figures.violations.length === 0 ? 'Nothing was lost, nothing was counted twice, nothing leaked, and every phone converged.' : `${figures.violations.length} rules were broken.`);
process.exit(figures.violations.length === 0 ? 0 : 1);
