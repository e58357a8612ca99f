import { invalidInput } from '../../platform/http/problems.js';
import type { CompanyEntity } from './company.entity.js';

/**
 * Every price of a company is in its one currency: an amount in another one would be added up as if it were the same.
 * @throws Problem 400 at `pointer`/currency
 */
export function requireCompanyCurrency(company: Pick<CompanyEntity, 'currency'>, money: { readonly currency: string } | null | undefined, pointer: string): void {
  if (money === null || money === undefined || money.currency === company.currency) return;
  throw invalidInput([{ pointer: `${pointer}/currency`, detail: `must be ${company.currency}, the currency of the company` }]);
}
