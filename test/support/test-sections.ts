import type { TestPrices } from './test-quote.js';
import { usd } from './test-quote.js';

/**
 * Base 2,731.47 net, 83.59 tax: the clean-out in any case (1,394.00), the circulation of phase 1 (556.67 taxed), the
 * liner of phase 2 (780.80 taxed). Options: lights in phase 1 (100.05 taxed), the waterfall in phase 2 (484.64 taxed).
 */
export function sectionedQuote({ surveyId, partIds: [skimmer, underlayment, pump] }: TestPrices) {
  return {
    surveyId,
    title: 'Renovation of the lower pond in phases',
    validUntil: '2027-05-12',
    sections: [
      { key: 'waterfall', title: 'Waterfall', phase: 2, optional: true },
      { key: 'circulation', title: 'Skimmer and circulation' },
      { key: 'liner', title: 'Liner', phase: 2 },
      { key: 'lights', title: 'Lights', optional: true },
    ],
    labor: [{ costCode: 'cleanout' }],
    parts: [
      { partId: skimmer, quantity: '1', costCode: 'filtration', section: 'circulation' },
      { partId: underlayment, quantity: '640', costCode: 'liner', section: 'liner' },
      { partId: pump, quantity: '2', costCode: 'waterfall', section: 'waterfall' },
    ],
    other: [{ description: 'Lights at the edge', quantity: '1', unitPrice: usd('100.05'), unitCost: usd('60.00'), taxCategory: 'materials', costCode: 'lighting', section: 'lights' }],
  };
}
