import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line that a build server can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    let passed = 0;
    let failed = 0;
    for (const module of modules) {
      if (module.state() === 'failed' && [...module.children.allTests()].length === 0) failed += 1;
      for (const test of module.children.allTests()) {
        const state = test.result().state;
        if (state === 'passed') passed += 1;
        if (state === 'failed') failed += 1;
      }
    }
    process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
  }
}
