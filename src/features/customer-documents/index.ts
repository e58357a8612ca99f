export type * from './parts.js';
export { AFTER_THE_WORK, BEFORE_THE_WORK } from './cautions.js';
export { costCodeTitle, documentCompany, documentCustomer, documentSite } from './from-records.js';
export { companyBlock, customerParty, documentLanguage, siteParty } from './parties.js';
export { byCostCode, groupedTable, pricedTable, type LineGroup } from './priced-table.js';
export { requireSum, totalsOf, type DocumentSums } from './sums.js';
