import { DataSource } from 'typeorm';
import type { TestApp } from './test-app.js';

/** The statements that the service sends to the database while `work` runs, in their order, without those that say who asks and, every few seconds, whether their session stands. */
export async function statementsDuring(test: TestApp, work: () => Promise<unknown>): Promise<string[]> {
  const dataSource = test.app.get(DataSource);
  const original = dataSource.createQueryRunner.bind(dataSource);
  const statements: string[] = [];
  dataSource.createQueryRunner = (mode) => {
    const runner = original(mode);
    const query = runner.query.bind(runner) as (...args: unknown[]) => Promise<unknown>;
    runner.query = ((...args: unknown[]) => {
      const statement = String(args[0]);
      if (!/sign_in_session|set_config/.test(statement)) statements.push(statement);
      return query(...args);
    }) as typeof runner.query;
    return runner;
  };
  try {
    await work();
  } finally {
    dataSource.createQueryRunner = original;
  }
  return statements;
}
