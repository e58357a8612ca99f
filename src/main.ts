import { runService } from './run-service.js';

await runService();
