export { CompaniesModule } from './companies.module.js';
export { CompaniesService, requireTaxCategory, taxCategoriesOf } from './companies.service.js';
export { requireCompanyCurrency } from './company-currency.js';
export type { CompanyEntity } from './company.entity.js';
export { CompanyBody } from './companies.dto.js';
