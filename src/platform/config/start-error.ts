/**
 * A reason not to start. The message is shown as it is, without a stack: finished sentences for the
 * person at the terminal that say what is wrong, why, and what to do about it.
 */
export class StartError extends Error {
  override readonly name = 'StartError';
}
