export { SyncModule } from './sync.module.js';
