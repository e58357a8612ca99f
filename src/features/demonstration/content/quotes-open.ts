import { COURT_POND_QUOTE } from './quote-court-pond.js';
import type { DemoQuote } from './quote.js';

/** Quotes that nobody has accepted so far. */
export const OPEN_QUOTES: readonly DemoQuote[] = [
  {
    key: 'garden', title: 'Garden pond: deeper, planted and lit', feature: 'quillfeather-garden', surveyed: true, madeDaysAgo: 24, issuedDaysAgo: 23,
    labor: ['drain', 'cleanout', 'liner', 'edge', ['plumbing', '1'], ['planting', '24'], ['lighting', '4']],
    parts: [
      ['UND-08', '420', 'liner'], ['LIN-60', '420', 'liner'], ['STN-BLD-12', '2', 'edge'], ['PMP-3000', '1', 'plumbing'], ['PLT-LILY', '4', 'planting'], ['PLT-IRIS', '20', 'planting'], ['LGT-3W', '4', 'lighting'], ['LGT-XFM-60', '1', 'lighting'],
    ],
    revised: {
      reason: 'Without the lights, and the smaller pump, to stay within the budget', issuedDaysAgo: 5,
      labor: ['drain', 'cleanout', 'liner', 'edge', ['plumbing', '1'], ['planting', '24']],
      parts: [['UND-08', '420', 'liner'], ['LIN-60', '420', 'liner'], ['STN-BLD-12', '2', 'edge'], ['PMP-1500', '1', 'plumbing'], ['PLT-LILY', '4', 'planting'], ['PLT-IRIS', '20', 'planting']],
    },
  },
  {
    key: 'upper', title: 'Renovation of the upper pond', feature: 'tillotsen-upper', surveyed: true, madeDaysAgo: 7, issuedDaysAgo: 6,
    labor: ['cleanout', 'edge'],
    parts: [['PMP-3000', '1', 'plumbing'], ['LIN-45', '640', 'liner'], ['STN-BLD-12', '2', 'edge']],
  },
  COURT_POND_QUOTE,
  {
    key: 'lily', title: 'Lily pond, first phase: clean-out and circulation', feature: 'murrow-lily', surveyed: true, madeDaysAgo: 1, issuedDaysAgo: null,
    labor: ['drain', 'cleanout', 'hauling', ['plumbing', '1']],
    parts: [['PMP-1500', '1', 'plumbing'], ['PIP-FLEX-2', '25', 'plumbing']],
  },
];
