import type { SiteEntity } from './site.entity.js';
import type { SiteBody, SiteView } from './sites.dto.js';

export function toSiteView(row: SiteEntity): SiteView {
  const { id, customerId, address, timeZone, accessNotes, hazards } = row;
  return { id, customerId, address, timeZone, accessNotes, hazards, position: positionOf(row), createdAt: row.createdAt.toISOString() };
}

/** The site as the request that would make it: what a patch is merged into. */
export function toSiteBody(row: SiteEntity): SiteBody {
  const { customerId, address, timeZone, accessNotes, hazards } = row;
  return { customerId, address, timeZone, accessNotes, hazards, position: positionOf(row) };
}

/** @param usualZone the company's time zone, for a site that names none */
export function toSiteRow(body: SiteBody, usualZone: string): Pick<SiteEntity, 'customerId' | 'address' | 'timeZone' | 'accessNotes' | 'hazards' | 'latitude' | 'longitude'> {
  return {
    customerId: body.customerId,
    address: body.address,
    timeZone: body.timeZone ?? usualZone,
    accessNotes: body.accessNotes ?? null,
    hazards: body.hazards ?? null,
    latitude: body.position?.latitude ?? null,
    longitude: body.position?.longitude ?? null,
  };
}

function positionOf({ latitude, longitude }: SiteEntity): SiteView['position'] {
  return latitude === null || longitude === null ? null : { latitude, longitude };
}
