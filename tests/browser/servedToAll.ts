import type { TestProject } from 'vitest/node';
import { serve } from './served.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built page is served. */
    readonly address: string;
  }
}

/** Builds the page once and serves it to every file of these tests. */
export default async function servedToAll(project: TestProject): Promise<() => Promise<void>> {
  const { address, stop } = await serve();
  project.provide('address', address);
  return stop;
}
