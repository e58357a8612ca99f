export { SitesModule } from './sites.module.js';
export { SitesService } from './sites.service.js';
export type { SiteEntity } from './site.entity.js';
export type { SiteBody } from './sites.dto.js';
