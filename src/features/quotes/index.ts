export { QuotesModule } from './quotes.module.js';
export { type AcceptedQuote, QuotesService } from './quotes.service.js';
