export { QuotesModule } from './quotes.module.js';
export { type AcceptedQuote, QuotesService } from './quotes.service.js';
export { AcceptQuote } from './accept-quote.js';
export { CreateQuote } from './create-quote.js';
export { IssueQuote } from './issue-quote.js';
export { ReviseQuote } from './revise-quote.js';
export { LaborItemBody, OtherItemBody, PartItemBody, type QuoteBody, SectionBody } from './quotes.dto.js';
export { QuoteLineWorkingView } from './quote-views.dto.js';
export { priceLabor, type PricingRule, type SurveyTakeoff } from './price-labor.js';
