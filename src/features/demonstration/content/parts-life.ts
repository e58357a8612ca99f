import { counted, sold } from './part.js';

/** What grows, what lights, and what treats the water. */
export const LIFE = [
  ...counted([
    ['PLT-LILY', 'Hardy water lily, 2 gal pot', '24.00', '70'],
    ['PLT-IRIS', 'Blue flag iris, 1 gal pot', '9.80', '70'],
    ['PLT-RUSH', 'Soft rush, 1 gal pot', '8.40', '70'],
    ['PLT-PICK', 'Pickerel weed, 1 gal pot', '9.20', '70'],
    ['PLT-SEDGE', 'Tussock sedge, plug', '3.10', '80'],
    ['PLT-MARI', 'Marsh marigold, 1 qt pot', '6.50', '70'],
    ['PLT-HORN', 'Hornwort, bunch', '4.20', '80'],
  ], 'plants'),
  ...counted([
    ['FSH-GOLD', 'Goldfish, 4 in', '4.90', '100'],
    ['FSH-KOI', 'Koi, 6 in', '19.50', '100'],
  ]),
  ...counted([
    ['PLT-BSK', 'Planting basket, 10 in', '5.60', '60'],
    ['LGT-3W', 'Underwater light, 3 W, warm', '62.50', '45'],
    ['LGT-6W', 'Underwater light, 6 W, white', '84.00', '45'],
    ['LGT-XFM-60', 'Transformer, low voltage, 60 W, with photocell', '118.00', '40'],
    ['LGT-CON', 'Waterproof connector', '4.75', '80'],
    ['TRT-DECHL', 'Water conditioner for tap water, 64 fl oz', '19.60', '60'],
    ['TRT-START', 'Filter starter bacteria, 32 fl oz', '27.00', '60'],
    ['TRT-TEST', 'Water test kit', '31.50', '50'],
    ['NET-LEAF', 'Leaf net, 20 ft by 30 ft', '68.00', '50'],
  ]),
  ...sold([['LGT-CBL', 'Low-voltage cable, 12 gauge', '0.98', '60']], 'ft', '50'),
  ...sold([['SLT-POND', 'Salt for fish baths', '0.62', '60']], 'lb', '40'),
];
