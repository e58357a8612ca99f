export { requireFallingCurve, type CurvePoint } from './falling-curve.js';
