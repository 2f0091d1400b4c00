import { describe, expect, test } from 'vitest';
import { airCoilTurns } from '../../src/engine/circuit/airCoil.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { permeabilityOf, readBox } from '../../src/engine/stages/cores/readBox.ts';
import { bunched, coilAdvice } from '../../src/engine/stages/windings/coilAdvice.ts';

const evaluate = createEvaluator(stages);

function worked(texts: Readonly<Record<string, string>>) {
  let rig = examples[0];
  if (!rig) throw new Error('no example');
  for (const [path, text] of Object.entries(texts)) rig = withEntry(rig, path, text);
  const answer = evaluate(rig);
  return {
    at: (path: string) => valueAt(answer, path),
    problems: answer.stages.cores?.problems ?? [],
  };
}

describe('an unknown core', () => {
  // A_L = 0.2·µ·h·ln(OD/ID) nH in millimetres: FT37 (9.53/4.75/3.18) at µ 800 has 354 nH.
  test('permeability from the factor and the dimensions', () => {
    expect(permeabilityOf(354e-9, 9.53e-3, 4.75e-3, 3.18e-3)).toBeCloseTo(800, -1);
  });

  test('two trials on FT37-43 name it', () => {
    // 350 nH a turn squared: 35 µH at ten turns, 140 µH at twenty.
    const { at } = worked({
      'cores.turns1': '10',
      'cores.trial1': '35u',
      'cores.turns2': '20',
      'cores.trial2': '140u',
      'cores.outer': '9.53 mm',
      'cores.inner': '4.75 mm',
      'cores.height': '3.18 mm',
    });
    expect(at('cores.al')).toBeCloseTo(350e-9, 12);
    expect(at('cores.agreement')).toBe('holds');
    expect(at('cores.likely')).toContain('FT37-43');
    expect(readBox(at('cores.line') as string)[0]?.core?.al).toBeCloseTo(350e-9, 12);
  });

  test('trials more than 5 % apart are said to disagree', () => {
    const { at, problems } = worked({
      'cores.turns1': '10',
      'cores.trial1': '0.49u',
      'cores.turns2': '20',
      'cores.trial2': '2.2u',
    });
    expect(at('cores.apart')).toBeCloseTo(0.55 / 0.49 - 1, 6);
    expect(problems.map(({ field }) => field)).toContain('cores.trial2');
  });
});

describe('the box', () => {
  test('is read kindly, a wrong line stays', () => {
    const lines = readBox(
      'T50-2 x5\nft37-43 3\nnothing of the kind\nring OD 12,7 ID 7.7 h 4.8 AL 4.9n',
    );
    expect(lines.map(({ title, pieces }) => [title, pieces])).toEqual([
      ['T50-2', 5],
      ['FT37-43', 3],
      ['nothing of the kind', 1],
      ['ring', 1],
    ]);
    expect(lines.map(({ core }) => core === null)).toEqual([false, false, true, false]);
    expect(lines[3]?.core?.mix.kind).toBe('iron');
  });

  test('from the box only what lies in it is wound on, by Output and Windings alike', () => {
    const { at } = worked({ 'cores.box': 'T68-2 x4\nT106-2 2', 'cores.coilCore': 'box' });
    const windings = at('windings.coils') as readonly { core: string; turns: number; q: number }[];
    const output = at('output.asWound') as readonly { core: string; turns: number; q: number }[];
    expect(new Set(windings.map(({ core }) => core))).toEqual(new Set(['T68-2']));
    expect(output.map(({ core, turns }) => [core, turns])).toEqual(
      windings.slice(0, output.length).map(({ core, turns }) => [core, turns]),
    );
    for (const [i, { q }] of output.entries()) expect(q).toBeCloseTo(windings[i]?.q ?? 0, 9);
  });

  test('a box without anything fit says so', () => {
    const { problems } = worked({ 'cores.box': 'FT37-43 5', 'cores.coilCore': 'box' });
    expect(problems.map(({ field }) => field)).toContain('cores.coilCore');
  });
});

describe('what the meter says', () => {
  // A builder's log: ten turns 0.46 µH spread, 0.77 µH squeezed.
  test('ten turns bunched on a core hardly covered', () => {
    expect(bunched(0.46e-6, 0) * 1e6).toBeCloseTo(0.77, 2);
    expect(bunched(0.46e-6, 1)).toBe(0.46e-6);
  });

  const coil = { wanted: 1.77e-6, turns: 19, lAt: 1.77e-6, coverage: 0.5 };
  test.each([
    [1.78e-6, /Right/],
    [1.85e-6, /spread/],
    // One turn of nineteen is (1 − (18/19)²) = 10 %.
    [2.0e-6, /turn off.*10/],
    [1.7e-6, /squeeze/],
    [1.5e-6, /one more adds 11/],
  ])('%f H', (own, says) => {
    expect(coilAdvice({ ...coil, own })).toMatch(says);
  });
});

// Wheeler's own kind of example: 1 inch across, 1 inch long, 20 turns: 0.25·400/(4.5 + 10) = 6.9 µH.
test('an air coil by hand', () => {
  const turns = airCoilTurns(6.9e-6, 25.4e-3, 25.4e-3 / 20);
  expect(turns).toBeGreaterThan(19.6);
  expect(turns).toBeLessThan(20.4);
});
