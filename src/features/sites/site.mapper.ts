import type { SiteEntity } from './site.entity.js';
import type { SiteBody, SiteView } from './sites.dto.js';

export function toSiteView(row: SiteEntity): SiteView {
  const { id, customerId, address, timeZone, accessNotes, hazards } = row;
  return { id, customerId, address, timeZone, accessNotes, hazards, createdAt: row.createdAt.toISOString() };
}

/** The site as the request that would make it: what a patch is merged into. */
export function toSiteBody({ customerId, address, timeZone, accessNotes, hazards }: SiteEntity): SiteBody {
  return { customerId, address, timeZone, accessNotes, hazards };
}

/** @param usualZone the company's time zone, for a site that names none */
export function toSiteRow(body: SiteBody, usualZone: string): Pick<SiteEntity, 'customerId' | 'address' | 'timeZone' | 'accessNotes' | 'hazards'> {
  return {
    customerId: body.customerId,
    address: body.address,
    timeZone: body.timeZone ?? usualZone,
    accessNotes: body.accessNotes ?? null,
    hazards: body.hazards ?? null,
  };
}
