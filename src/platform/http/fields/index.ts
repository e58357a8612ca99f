export * from './field.js';
export * from './ids.js';
export * from './money.js';
export * from './numbers.js';
export * from './quantity.js';
export * from './structures.js';
export * from './text.js';
export * from './time.js';
