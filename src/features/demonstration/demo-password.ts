import { randomInt } from 'node:crypto';
import { StartError } from '../../platform/config/start-error.js';
import { PEOPLE } from './content/company.js';

/** Without the letters and digits that are taken for each other when read off a screen. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz23456789';
const GROUPS = 4;
const GROUP_LENGTH = 5;

/** Twenty random letters and digits (99 bits) in four groups. */
export function randomPassword(): string {
  const group = (): string => Array.from({ length: GROUP_LENGTH }, () => LETTERS[randomInt(LETTERS.length)]).join('');
  return Array.from({ length: GROUPS }, group).join('-');
}

/** Nobody may have a password that holds their own address; all of the demonstration share one. */
export function requireUsable(password: string): void {
  const address = PEOPLE.find(({ email }) => password.toLowerCase().includes(email));
  if (address !== undefined) throw new StartError(`RILLBOOK_DEMO_PASSWORD must not hold ${address.email}, the address of somebody who would sign in with it. Take another.`);
}
