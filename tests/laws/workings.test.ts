import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Stage } from '../../src/engine/fields/stage.ts';
import type { Rig } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { dimensionsOff, reckon } from '../../src/engine/rig/reckon.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { type Unfolded, unfold, workingCount } from '../../src/engine/rig/unfold.ts';
import type { Worked } from '../../src/engine/rig/worked.ts';
import { randomRig } from './randomRig.ts';

/** Results, columns and curve quantities that must have a working. */
function workingKeys({ fields }: Stage): string[] {
  return Object.entries(fields.results).flatMap(([key, field]) => {
    if (field.kind === 'model') return [];
    if (field.kind === 'table') return Object.keys(field.columns).map((c) => `${key}.${c}`);
    if (field.kind === 'curve') {
      return Object.keys(field.of)
        .filter((c) => c !== field.along)
        .map((c) => `${key}.${c}`);
    }
    return [key];
  });
}

/** Up to seven indices, the ends included. */
function sample(count: number): number[] {
  if (count <= 7) return [...Array(count).keys()];
  return [...new Set([0, 1, 2, 3, 4, 5, 6].map((i) => Math.round((i * (count - 1)) / 6)))];
}

/** All stages look at the same random rigs, so that each is worked once and not once for each stage. */
const seed = Date.now() % 0x7fffffff;
const everWorked = new Map<string, Worked>();

function workedFor(rig: Rig): Worked {
  const said = JSON.stringify(rig);
  const worked = everWorked.get(said) ?? createEvaluator(stages)(rig);
  everWorked.set(said, worked);
  return worked;
}

function check(rig: Rig, stage: Stage): void {
  const worked = workedFor(rig);
  for (const key of workingKeys(stage)) {
    for (const index of sample(workingCount(worked, stage, key))) {
      const unfolded = unfold(worked, stage, key, index);
      if (unfolded) checkOne(unfolded, `${stage.fields.key}.${key}[${index}] in ${rig.title}`);
    }
  }
}

function checkOne(unfolded: Unfolded, at: string): void {
  const { working, value, field, symbols } = unfolded;
  if ('rule' in working) {
    expect(['words', 'choice'], `${at}: only names and choices may have a bare rule`).toContain(
      field.kind,
    );
    return;
  }
  const reckoned = reckon(unfolded);
  if ('left' in working) {
    const right = reckoned?.right ?? Number.NaN;
    const scale = Math.max(Math.abs(Number(reckoned?.value)), Math.abs(right));
    expect(symbols.find((s) => s.name === working.root)?.value, `${at}: root`).toBe(value);
    expect(Math.abs(Number(reckoned?.value) - right), `${at}: residual`).toBeLessThanOrEqual(
      1e-9 * scale,
    );
  } else if (typeof value === 'number') {
    const off = Math.abs(Number(reckoned?.value) - value);
    expect(
      off,
      `${at}: ${working.formula} gives ${reckoned?.value}, not ${value}`,
    ).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(value), 1e-300));
  } else {
    expect(reckoned?.value, `${at}: ${working.formula}`).toBe(value);
  }
  expect(dimensionsOff(unfolded), `${at}: units`).toBeNull();
}

describe.each(stages.map((stage) => [stage.fields.key, stage] as const))('%s', (_, stage) => {
  test('W1 every result has workings', () => {
    const keys = Object.keys(stage.workings).sort();
    expect(keys).toEqual(workingKeys(stage).sort());
    for (const key of keys) expect((stage.workings as Record<string, unknown>)[key]).toBeTruthy();
  });

  test('W2, W3 formulas meet the engine and their units, in the examples', () => {
    for (const rig of examples) check(rig, stage);
  });

  test('W2, W3 formulas meet the engine and their units, over random rigs', () => {
    fc.assert(
      fc.property(randomRig, (rig) => check(rig, stage)),
      { numRuns: 25, seed },
    );
  });
});
