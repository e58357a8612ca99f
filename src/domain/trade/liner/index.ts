export { boundingRectangle, type BoundingRectangle } from './bounding-rectangle.js';
export { cutPlans, type CutPlan, type CutStrip } from './cut-plan.js';
export { outlineSpans } from './outline-spans.js';
export { goodsPrice, planCost, ROLL_PRICE_BASES, type RollPrice, type RollPriceBasis, type SeamPrice } from './plan-cost.js';
export { linerSheet, sheetMargin, type LinerSheet, type ProfileStep } from './sheet.js';
export { cutStrips, type PricedRoll, type Roll, type StripSet } from './strips.js';
export { LEAST_MIL, thicknessWarnings, type LinerMaterial } from './thickness.js';
export { straightSheet, USUAL_OVERLAP_M } from './straight-sheet.js';
