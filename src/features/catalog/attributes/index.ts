export { MOST_CURVE_POINTS } from './attributes.dto.js';
export { ApiAttributes, ATTRIBUTES_CLASSES, AttributesField } from './attributes-field.js';
export { requireSoundAttributes } from './check-attributes.js';
export type { PartAttributes } from './part-attributes.js';
export { PART_KINDS, type PartKind } from './part-kinds.js';
