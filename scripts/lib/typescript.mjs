// `node --import ./scripts/lib/typescript.mjs file.ts` runs a TypeScript file of this project.
import { register } from 'node:module';

register('./typescript-hooks.mjs', import.meta.url);
