import type { DemoJob, DemoPurchase } from './job.js';

const bought = (daysAgo: number, kind: DemoPurchase['kind'], costCode: string, description: string, amount: string, supplier: string, reference: string): DemoPurchase => ({
  daysAgo, kind, costCode, description, amount, supplier, reference,
});

/** In the order in which they were accepted. Suppliers are invented. */
export const JOBS: readonly DemoJob[] = [
  {
    quote: 'strake', acceptedBy: 'Wilhelmina Strake', acceptedDaysAgo: 76,
    work: { crew: 'heron', startedDaysAgo: 70, pace: 0.92, notes: { drain: 'Fourteen goldfish and two frogs in the tank', filtration: 'Media only rinsed, as agreed' } },
    purchases: [bought(68, 'disposal', 'hauling', 'Sediment, 9 yd3', '176.00', 'Cindermoor Transfer Yard', 'Ticket 40117')],
    bill: { issuedDaysAgo: 62, payments: [{ daysAgo: 50, percentOfBalance: 100, method: 'check', reference: 'Check 2207' }] },
  },
  {
    quote: 'larkenby', acceptedBy: 'R. Amblethwaite for Larkenby House', acceptedDaysAgo: 67,
    work: {
      crew: 'newt', startedDaysAgo: 60, pace: 2.35, notes: { cleanout: 'A second layer of clay and roots under the sediment', hauling: 'By barrow only: the kitchen yard was closed to us', liner: 'North wall had to be propped before we could lay' },
      late: [58, 57].map((daysAgo) => ({ person: 'crew2', daysAgo, costCode: 'liner', until: '20:00', note: 'Stayed with the mason until the wall stood safe' })),
    },
    purchases: [
      bought(58, 'disposal', 'hauling', 'Sediment and old liner, 21 yd3', '612.00', 'Cindermoor Transfer Yard', 'Ticket 40161'),
      bought(57, 'rental', 'cleanout', 'Mini excavator, three days', '885.00', 'Otterbeck Tool Hire', 'R-5518'),
      bought(55, 'subcontract', 'liner', 'Propping of the north wall by a mason', '1240.00', 'Hobb Masonry Works', '0093'),
    ],
    bill: { issuedDaysAgo: 46, payments: [{ daysAgo: 30, percentOfBalance: 100, method: 'bank-transfer', reference: 'LH-88412' }] },
  },
  {
    quote: 'basin', acceptedBy: 'The board of Birchwick Commons', acceptedDaysAgo: 49,
    work: { crew: 'heron', startedDaysAgo: 44, pace: 1.05 },
    purchases: [bought(43, 'disposal', 'hauling', 'Sediment, 3 yd3', '72.00', 'Cindermoor Transfer Yard', 'Ticket 40203')],
    bill: { issuedDaysAgo: 36, payments: [] },
  },
  {
    quote: 'fall', acceptedBy: 'Leonie Vantreese', acceptedDaysAgo: 31,
    work: { crew: 'newt', startedDaysAgo: 26, pace: 1.1, notes: { waterfall: 'Loose capstone set in mortar again' } },
    purchases: [bought(26, 'rental', 'waterfall', 'Stair lift, two days', '260.00', 'Otterbeck Tool Hire', 'R-5602')],
    bill: { issuedDaysAgo: 19, payments: [{ daysAgo: 8, percentOfBalance: 40, method: 'card', reference: null }] },
  },
  {
    quote: 'mill', acceptedBy: 'Jonas Tillotsen-Rae', acceptedDaysAgo: 24,
    work: { crew: 'heron', startedDaysAgo: 18, pace: 0.98 },
    purchases: [bought(17, 'other', 'cleanout', 'Fuel for the trash pump', '48.60', 'Moss Ferry Fuel Stop', '7712')],
    bill: { issuedDaysAgo: 7, payments: [] },
  },
  {
    quote: 'fish', acceptedBy: 'Emeka Brandolph', acceptedDaysAgo: 10,
    work: { crew: 'heron', startedDaysAgo: 4, pace: 1.08, daysSoFar: 3, notes: { drain: 'All eleven fish in the tanks, air running', cleanout: 'Bottom drain was full of gravel' } },
    purchases: [bought(3, 'disposal', 'hauling', 'Sediment, 7 yd3', '141.00', 'Cindermoor Transfer Yard', 'Ticket 40288')],
  },
  { quote: 'nature', acceptedBy: 'P. Hollowbrook for Fennelcote School', acceptedDaysAgo: 4 },
];
