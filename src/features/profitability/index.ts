export { ProfitabilityModule } from './profitability.module.js';
