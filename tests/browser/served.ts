import { createHash } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { build, type PreviewServer, preview } from 'vite';

/** Builds the page into a folder of its own and serves it; answers the address and a way to stop. */
export async function serve(): Promise<{ address: string; stop: () => Promise<void> }> {
  const outDir = `node_modules/.cache/page-${createHash('sha1').update(String(process.pid)).digest('hex').slice(0, 8)}`;
  await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server: PreviewServer = await preview({
    logLevel: 'error',
    build: { outDir },
    preview: { port: 0, open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('the page is served nowhere');
  return {
    address,
    async stop() {
      await server.close();
      await rm(outDir, { recursive: true, force: true });
    },
  };
}
