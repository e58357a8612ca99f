// Jest runs the TypeScript as ES modules, so that the tests load what production loads.
export default {
  testEnvironment: 'node',
  roots: ['<rootDir>/test'],
  testMatch: ['**/*.test.ts'],
  extensionsToTreatAsEsm: ['.ts'],
  moduleNameMapper: { '^(\\.{1,2}/.*)\\.js$': '$1' },
  transform: {
    '^.+\\.ts$': [
      '@swc/jest',
      {
        module: { type: 'es6' },
        jsc: {
          target: 'es2022',
          parser: { syntax: 'typescript', decorators: true },
          transform: { legacyDecorator: true, decoratorMetadata: true, useDefineForClassFields: false },
        },
      },
    ],
  },
  // One PostgreSQL server a run, with a migrated template database.
  globalSetup: '<rootDir>/test/support/global-setup.mjs',
  globalTeardown: '<rootDir>/test/support/global-teardown.mjs',
  testTimeout: 30_000,
  maxWorkers: 2,
  // Each file loads the service anew and nothing gives the modules of the last one back: a worker that has grown is
  // replaced, or the collector takes most of its time once it nears the heap's limit.
  workerIdleMemoryLimit: '1200MB',
};
