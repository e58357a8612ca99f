import { counted, sold } from './part.js';

/** What holds the water, and the stone around it. */
export const GROUND = [
  ...sold([
    ['UND-08', 'Underlayment, non-woven, 8 oz', '0.24', '40'],
    ['LIN-45', 'Liner, rubber, 45 mil', '0.87', '40'],
    ['LIN-60', 'Liner, rubber, 60 mil', '1.19', '40'],
    ['FAB-ROCK', 'Protective fabric over the liner', '0.31', '40'],
  ], 'ft2', '1'),
  ...sold([
    ['STN-BLD-12', 'Boulders, 12 to 18 in', '186.40', '30'],
    ['STN-BLD-24', 'Boulders, 24 to 36 in', '214.00', '30'],
    ['STN-FLG', 'Flagstone, 2 in', '395.00', '30'],
    ['GRV-RND-1', 'Round gravel, 3/4 to 1 1/2 in', '46.50', '35'],
    ['GRV-RND-3', 'Round cobble, 3 to 6 in', '72.00', '35'],
    ['SND-WASH', 'Washed sand', '28.40', '35'],
  ], 'ton', '0.5'),
  ...sold([['LIN-TAPE', 'Seam tape for liner, 3 in', '1.65', '50']], 'ft', '25'),
  ...sold([['EDG-STEEL', 'Steel edging, 4 in', '3.85', '40']], 'ft', '10'),
  ...counted([
    ['LIN-PATCH', 'Liner patch kit', '22.50', '60'],
    ['GLU-PIPE', 'Pipe cement, 16 fl oz', '11.80', '60'],
    ['GLU-PRIM', 'Pipe primer, 16 fl oz', '10.40', '60'],
    ['FOM-STONE', 'Foam for waterfall stones, can', '17.90', '60'],
    ['SIL-SEAL', 'Sealant safe for fish, cartridge', '13.20', '60'],
    ['CLM-2', 'Hose clamp, stainless, 2 in', '2.30', '80'],
  ]),
];
