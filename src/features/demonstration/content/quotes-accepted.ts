import type { DemoQuote } from './quote.js';

/** Quotes that became jobs, in the order in which they were made. */
export const ACCEPTED_QUOTES: readonly DemoQuote[] = [
  {
    key: 'strake', title: 'Renovation of the back pond', feature: 'strake-back', surveyed: true, madeDaysAgo: 80, issuedDaysAgo: 79,
    labor: ['drain', 'cleanout', 'hauling', 'edge', ['plumbing', '1'], ['filtration', '1'], ['start-up', '1']],
    parts: [
      ['PMP-3000', '1', 'plumbing'], ['PIP-FLEX-2', '50', 'plumbing'], ['VLV-CHK-2', '1', 'plumbing'], ['PAD-16', '2', 'filtration'], ['MED-BIO', '2', 'filtration'],
      ['STN-BLD-12', '1.5', 'edge'], ['GRV-RND-1', '2', 'edge'], ['TRT-DECHL', '2', 'start-up'], ['TRT-START', '1', 'start-up'],
    ],
    other: [['Disposal of sediment', '260.00', '190.00', 'hauling']],
  },
  {
    key: 'larkenby', title: 'Renovation of the terrace pond', feature: 'larkenby-terrace', surveyed: true, madeDaysAgo: 72, issuedDaysAgo: 71,
    labor: ['drain', 'cleanout', 'hauling', 'liner', ['filtration', '2'], ['start-up', '1']],
    parts: [
      ['UND-08', '720', 'liner'], ['LIN-45', '720', 'liner'], ['LIN-TAPE', '30', 'liner'], ['SKM-24', '1', 'filtration'], ['AER-40', '1', 'filtration'], ['TRT-DECHL', '4', 'start-up'],
    ],
    other: [['Disposal of sediment and old liner', '380.00', '290.00', 'hauling']],
  },
  {
    key: 'basin', title: 'Entrance basin: clean-out, doser and lights', feature: 'commons-basin', surveyed: true, madeDaysAgo: 54, issuedDaysAgo: 53,
    labor: ['drain', 'cleanout', 'hauling', ['plumbing', '1'], ['lighting', '6'], ['start-up', '1']],
    parts: [
      ['DSR-01', '1', 'plumbing'], ['DSR-REF', '2', 'plumbing'], ['LGT-6W', '6', 'lighting'], ['LGT-XFM-60', '1', 'lighting'], ['LGT-CBL', '100', 'lighting'], ['LGT-CON', '12', 'lighting'], ['TRT-DECHL', '2', 'start-up'],
    ],
  },
  {
    key: 'fall', title: 'Rebuilding of the courtyard waterfall', feature: 'vantreese-fall', surveyed: false, madeDaysAgo: 34, issuedDaysAgo: 33,
    labor: [['waterfall', '1'], ['plumbing', '1'], ['start-up', '1']],
    parts: [
      ['WFL-24', '1', 'waterfall'], ['LIN-45', '160', 'waterfall'], ['UND-08', '160', 'waterfall'], ['STN-BLD-24', '2', 'waterfall'], ['FOM-STONE', '6', 'waterfall'], ['PIP-FLEX-2', '25', 'plumbing'], ['CLM-2', '4', 'plumbing'],
    ],
    other: [['Stair lift for stones, two days', '340.00', '260.00', 'waterfall']],
  },
  {
    key: 'mill', title: 'Renovation of the mill pond', feature: 'tillotsen-mill', surveyed: true, madeDaysAgo: 28, issuedDaysAgo: 27,
    labor: ['drain', 'cleanout', 'hauling', ['filtration', '1'], ['planting', '40'], ['start-up', '1']],
    parts: [
      ['BIO-80', '1', 'filtration'], ['PIP-RIGID-2', '40', 'filtration'], ['ELB-2', '6', 'filtration'], ['PLT-LILY', '6', 'planting'], ['PLT-IRIS', '14', 'planting'], ['PLT-RUSH', '20', 'planting'], ['TRT-START', '2', 'start-up'],
    ],
  },
  {
    key: 'fish', title: 'Fish pond: clean-out and new circulation', feature: 'brandolph-fish', surveyed: true, madeDaysAgo: 18, issuedDaysAgo: 17,
    labor: ['drain', 'cleanout', 'hauling', ['plumbing', '2'], ['filtration', '2'], ['start-up', '1']],
    parts: [
      ['PMP-4500', '1', 'plumbing'], ['PIP-FLEX-2', '75', 'plumbing'], ['VLV-BALL-2', '3', 'plumbing'], ['BKH-2', '2', 'plumbing'], ['SKM-16', '1', 'filtration'], ['MED-BIO', '4', 'filtration'], ['SLT-POND', '80', 'start-up'], ['TRT-DECHL', '5', 'start-up'],
    ],
    other: [['Holding tanks and air for eleven fish', '180.00', '95.00', 'drain']],
  },
  {
    key: 'nature', title: 'Nature pond: clearing, safe edge and planting', feature: 'fennelcote-nature', surveyed: true, madeDaysAgo: 13, issuedDaysAgo: 12,
    labor: ['drain', 'cleanout', 'edge', ['planting', '90']],
    parts: [
      ['STN-FLG', '1.5', 'edge'], ['GRV-RND-1', '3', 'edge'], ['PLT-SEDGE', '60', 'planting'], ['PLT-PICK', '20', 'planting'], ['PLT-MARI', '10', 'planting'],
    ],
    other: [['Temporary fence while the water is open', '220.00', '150.00', 'edge']],
  },
];
