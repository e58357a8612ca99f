// Jest loads this file with plain Node, which reads no TypeScript without help.
import '../../scripts/lib/typescript.mjs';

const { startTestServer } = await import('./test-server.ts');

export default startTestServer;
