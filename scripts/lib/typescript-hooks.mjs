// Module hooks that let plain Node import this project's TypeScript, with the settings of the tests.
// Only for tools beside the service: the service itself runs what `nest build` made.
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transform } from '@swc/core';

export async function resolve(specifier, context, next) {
  // TypeScript files import each other under the name that they will have after the build.
  if (specifier.startsWith('.') && specifier.endsWith('.js')) {
    return next(`${specifier.slice(0, -3)}.ts`, context).catch(() => next(specifier, context));
  }
  return next(specifier, context);
}

export async function load(url, context, next) {
  if (!url.startsWith('file:') || !url.endsWith('.ts')) return next(url, context);
  const filename = fileURLToPath(url);
  const { code } = await transform(await readFile(filename, 'utf8'), {
    filename,
    sourceMaps: 'inline',
    module: { type: 'es6' },
    jsc: {
      target: 'es2022',
      parser: { syntax: 'typescript', decorators: true },
      transform: { legacyDecorator: true, decoratorMetadata: true, useDefineForClassFields: false },
    },
  });
  return { format: 'module', source: code, shortCircuit: true };
}
