export { FieldFactsModule } from './field-facts.module.js';
