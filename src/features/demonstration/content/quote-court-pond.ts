import type { DemoQuote } from './quote.js';

/** Base work in two phases and three options, for a customer who can not pay for everything at once. */
export const COURT_POND_QUOTE: DemoQuote = {
  key: 'court', title: 'Renovation of the court pond, in phases', feature: 'aberquill-court', surveyed: true, madeDaysAgo: 4, issuedDaysAgo: 3,
  labor: [['start-up', '1']],
  parts: [['TRT-DECHL', '2', 'start-up'], ['TRT-START', '1', 'start-up']],
  sections: [
    {
      key: 'clean-out', title: 'Clean-out', phase: 1, labor: ['drain', 'cleanout', 'hauling'], parts: [],
      other: [['Disposal of sediment', '240.00', '175.00', 'hauling']],
    },
    {
      key: 'circulation', title: 'Skimmer and circulation', phase: 1, labor: [['filtration', '1'], ['plumbing', '1']],
      parts: [
        ['SKM-16', '1', 'filtration'], ['PMP-3000', '1', 'plumbing'], ['PIP-FLEX-2', '42', 'plumbing'], ['ELB-2', '5', 'plumbing'], ['TEE-2', '1', 'plumbing'], ['VLV-BALL-2', '1', 'plumbing'], ['VLV-CHK-2', '1', 'plumbing'],
      ],
    },
    { key: 'liner', title: 'New liner', phase: 2, labor: ['liner'], parts: [['UND-08', '650', 'liner'], ['LIN-45', '650', 'liner']] },
    { key: 'edge', title: 'Edge, with the stone that is there', phase: 2, labor: ['edge', ['reclaim', '12']], parts: [['STN-BLD-12', '1.5', 'edge'], ['GRV-RND-1', '1', 'edge']] },
    { key: 'filter', title: 'Biological filter', phase: 2, labor: [['filtration', '1']], parts: [['BIO-40', '1', 'filtration'], ['MED-BIO', '1', 'filtration']] },
    {
      key: 'lights', title: 'Underwater lights', phase: 1, optional: true, labor: [['lighting', '3']],
      parts: [['LGT-3W', '3', 'lighting'], ['LGT-XFM-60', '1', 'lighting'], ['LGT-CBL', '50', 'lighting'], ['LGT-CON', '6', 'lighting']],
    },
    { key: 'waterfall', title: 'Waterfall', phase: 2, optional: true, labor: [['waterfall', '1']], parts: [['WFL-24', '1', 'waterfall'], ['STN-BLD-24', '1', 'waterfall'], ['FOM-STONE', '3', 'waterfall']] },
    { key: 'planting', title: 'Planting', phase: 2, optional: true, labor: [['planting', '20']], parts: [['PLT-LILY', '2', 'planting'], ['PLT-RUSH', '9', 'planting'], ['PLT-MARI', '9', 'planting']] },
  ],
};
