import { expect, test } from 'vitest';
import { exampleSweeps } from '../../../src/engine/rig/exampleSweeps.ts';
import { makeExampleSweeps } from '../../fixtures/makeExampleSweeps.ts';

test('the example sweeps are what the simulator makes', async () => {
  expect(exampleSweeps).toEqual(await makeExampleSweeps());
});
