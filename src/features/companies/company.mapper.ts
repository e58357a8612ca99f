import { Decimal } from '../../domain/decimal.js';
import { type Actor, seesMoney } from '../../platform/auth/actor.js';
import type { CompanyBody, CompanyView } from './companies.dto.js';
import type { CompanyEntity } from './company.entity.js';

export function toCompanyView(actor: Actor, row: CompanyEntity): CompanyView {
  const { laborSellRate, ...shared } = toCompanyBody(row);
  return {
    id: row.companyId,
    ...shared,
    address: row.address,
    phone: row.phone,
    email: row.email,
    licenceNumber: row.licenceNumber,
    laborTaxCategory: row.laborTaxCategory,
    paymentInstructions: row.paymentInstructions,
    keepPhotoLocation: row.keepPhotoLocation,
    ...(seesMoney(actor) ? { laborSellRate } : {}),
  };
}

/** The settings as the request that would set them: what a patch is merged into. */
export function toCompanyBody(row: CompanyEntity): CompanyBody {
  return {
    name: row.name,
    address: row.address || null,
    phone: row.phone,
    email: row.email,
    licenceNumber: row.licenceNumber,
    currency: row.currency,
    timeZone: row.timeZone,
    locale: row.locale,
    unitSystem: row.unitSystem,
    paperSize: row.paperSize,
    laborSellRate: atLeastCents(row.laborSellRate),
    hourIncrement: row.hourIncrement.toFixed(),
    taxCategories: row.taxCategories.map(({ code, name, rate }) => ({ code, name, rate })),
    laborTaxCategory: row.laborTaxCategory,
    paymentTermsDays: row.paymentTermsDays,
    paymentInstructions: row.paymentInstructions,
    keepPhotoLocation: row.keepPhotoLocation,
  };
}

export function toCompanyRow(body: CompanyBody): Omit<CompanyEntity, 'companyId' | 'id' | 'version' | 'createdAt'> {
  return {
    name: body.name,
    address: body.address ?? '',
    phone: body.phone ?? null,
    email: body.email ?? null,
    licenceNumber: body.licenceNumber ?? null,
    currency: body.currency,
    timeZone: body.timeZone,
    locale: body.locale,
    unitSystem: body.unitSystem,
    paperSize: body.paperSize,
    laborSellRate: new Decimal(body.laborSellRate),
    hourIncrement: new Decimal(body.hourIncrement),
    taxCategories: body.taxCategories.map(({ code, name, rate }) => ({ code, name, rate })),
    laborTaxCategory: body.laborTaxCategory ?? null,
    paymentTermsDays: body.paymentTermsDays,
    paymentInstructions: body.paymentInstructions ?? null,
    keepPhotoLocation: body.keepPhotoLocation ?? false,
  };
}

/** "68" reads like a count; "68.00" like a rate. */
function atLeastCents(rate: Decimal): string {
  return rate.toFixed(Math.max(2, rate.decimalPlaces()));
}
