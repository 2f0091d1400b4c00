/// <reference types="vitest/config" />
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

// A browser is opened only where there is a desktop to open it on.
const desktop =
  process.platform === 'darwin' ||
  process.platform === 'win32' ||
  Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY);

export default defineConfig({
  base: './',
  plugins: [react()],
  build: { target: 'es2022', chunkSizeWarningLimit: 1200 },
  server: { host: '127.0.0.1' },
  preview: { host: '127.0.0.1', port: 4173, open: desktop && !process.env.CI },
  test: {
    reporters: ['default', './tests/closing-line.ts'],
    maxWorkers: '100%',
    // Threads start in half the time of processes. Each file has one of its own: where several share
    // one, what the compiler made for the first makes the filter's inner loops many times slower.
    pool: 'threads',
    projects: [
      {
        extends: true,
        test: {
          name: 'engine',
          environment: 'node',
          include: ['tests/{laws,reference,properties,paper}/**/*.test.ts'],
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'store',
          environment: 'node',
          include: ['tests/store/**/*.test.ts'],
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'page',
          environment: 'happy-dom',
          include: ['tests/{worksheets,scenes}/**/*.test.tsx'],
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 180_000,
          pool: 'forks',
          globalSetup: 'tests/browser/servedToAll.ts',
        },
      },
    ],
  },
});
