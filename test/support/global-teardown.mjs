import '../../scripts/lib/typescript.mjs';

const { stopTestServer } = await import('./test-server.ts');

export default stopTestServer;
