export type * from './model.js';
export { renderDocument } from './render.js';
export { clean, REPLACEMENT } from './text.js';
export { documentFormat, type DocumentFormat } from './format.js';
