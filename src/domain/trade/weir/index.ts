export { LIP_KINDS, lipFlow, LOOK_NAMES, lookFlow, sheetThickness, type LipKind, type Look } from './lip.js';
export { waterfall, type Waterfall, type WaterfallInput } from './waterfall.js';
export { WEIR_KINDS, weirFlow, type WeirFlow, type WeirInput, type WeirKind } from './weir-flow.js';
