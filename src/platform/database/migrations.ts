import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The folder of numbered SQL files beside `src` and `dist`. */
export const MIGRATIONS_FOLDER = fileURLToPath(new URL('../../../migrations/', import.meta.url));

export type MigrationClass = new () => MigrationInterface;

/**
 * Turns each numbered SQL file into a migration that TypeORM runs and remembers. TypeORM orders migrations by the
 * number at the end of their name and wants thirteen digits, so 0002-x.sql becomes X0000000000002.
 */
export async function loadMigrations(folder = MIGRATIONS_FOLDER): Promise<MigrationClass[]> {
  const files = (await readdir(folder)).filter((file) => /^\d{4}-[a-z0-9-]+\.sql$/.test(file)).sort();
  return Promise.all(
    files.map(async (file) => {
      const sql = await readFile(new URL(file, `file://${folder}`), 'utf8');
      const slug = file.slice(5, -4).replace(/(^|-)(\w)/g, (_, __, letter: string) => letter.toUpperCase());
      return class implements MigrationInterface {
        readonly name = `${slug}${file.slice(0, 4).padStart(13, '0')}`;
        readonly transaction = !sql.startsWith('-- no transaction');
        async up(runner: QueryRunner): Promise<void> {
          await runner.query(sql);
        }
        down(): Promise<void> {
          return Promise.reject(new Error(`Migrations only go forward: ${file} has no way back.`));
        }
      };
    }),
  );
}
