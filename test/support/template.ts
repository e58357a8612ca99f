import { provision } from '../../src/platform/database/provision.js';

/**
 * Brings the empty template database to the newest schema, once a test run.
 * @param url the owner's address of the template database
 */
export async function prepareTemplate(url: string): Promise<void> {
  await provision(url);
}
