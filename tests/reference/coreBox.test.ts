import { describe, expect, test } from 'vitest';
import { airCoilTurns } from '../../src/engine/circuit/airCoil.ts';
import { type Core, cores } from '../../src/engine/data/cores.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { doubt, offsetOf } from '../../src/engine/stages/cores/doubt.ts';
import { permeabilityOf, readBox } from '../../src/engine/stages/cores/readBox.ts';
import { coilAdvice } from '../../src/engine/stages/windings/coilAdvice.ts';

const evaluate = createEvaluator(stages);

function worked(texts: Readonly<Record<string, string>>) {
  let rig = examples[0];
  if (!rig) throw new Error('no example');
  for (const [path, text] of Object.entries(texts)) rig = withEntry(rig, path, text);
  const answer = evaluate(rig);
  return {
    at: (path: string) => valueAt(answer, path),
    problems: answer.stages.cores?.problems ?? [],
    windings: answer.stages.windings?.problems ?? [],
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

describe('what is wrong with two trials', () => {
  // Source: arithmetic. 4.9 nH a turn squared: 10 turns 0.49, 11 turns 0.593, 20 turns 1.96 µH.
  test.each([
    [{ turns1: 10, trial1: 0.593e-6, turns2: 20, trial2: 1.96e-6 }, /first had 11 turns, not 10/],
    [{ turns1: 10, trial1: 0.49e-6, turns2: 21, trial2: 1.96e-6 }, /second had 20 turns, not 21/],
    // 0.1 µH of leads added to both.
    [{ turns1: 10, trial1: 0.59e-6, turns2: 20, trial2: 2.06e-6 }, /add 0.10 µH|add 100 nH/],
    [{ turns1: 10, trial1: 0.49e-6, turns2: 20, trial2: 8e-6 }, /Neither/],
  ])('%o', (trials, says) => {
    const { turns1, trial1, turns2, trial2 } = trials;
    const [a, b] = [trial1 / turns1 ** 2, trial2 / turns2 ** 2];
    const words = doubt(trials, Math.abs(a - b) / Math.min(a, b)) ?? '';
    expect(words.replace(/[\u00a0\u202f]/g, ' ')).toMatch(says);
  });
  test('nothing where they agree', () => {
    expect(doubt({ turns1: 10, trial1: 1e-6, turns2: 20, trial2: 4e-6 }, 0)).toBeNull();
    expect(offsetOf({ turns1: 10, trial1: 1e-6, turns2: 10, trial2: 4e-6 })).toBeNull();
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

  // However people write it.
  test.each([
    ['5 x T37-6', 'T37-6', 5],
    ['3 FT50-61', 'FT50-61', 3],
    ['T68-2: 4', 'T68-2', 4],
    ['T 50 / 6, 2 pcs', 'T50-6', 2],
    ['ft37-43 older ×2', 'FT37-43 (older)', 2],
    ['BN-43-202 x2', 'BN-43-202', 2],
    ['t94-2', 'T94-2', 1],
  ])('%s', (line, title, pieces) => {
    expect(readBox(line)[0]).toMatchObject({ title, pieces });
  });

  test.each([
    ['black ring: OD 12.7 ID 7.7 h 4.8, AL 4.9n', 4.9e-9, 1],
    ['black ring 12.7/7.7/4.8 AL 49 µH/100 x3', 4.9e-9, 3],
    ['4 x black ring 9.5/4.75/3.2 AL 350 nH', 350e-9, 4],
    ['T50-26 AL 32n x4', 32e-9, 4],
  ])('%s', (line, al, pieces) => {
    const [read] = readBox(line);
    expect(read?.core?.al).toBeCloseTo(al, 14);
    expect(read?.pieces).toBe(pieces);
  });

  test('rings of one name are told apart; what cannot be read is not guessed', () => {
    const ring = 'ring 12.7/7.7/4.8 AL 4.9n';
    expect(readBox(`${ring}\n${ring}`).map(({ title }) => title)).toEqual(['ring', 'ring (2)']);
    for (const line of ['T50-26 x3', 'ring AL 420', 'ring OD 5 ID 7 h 3 AL 4n', 'OD', '5'])
      expect(readBox(line)[0]?.core, line).toBeNull();
  });

  test('pieces are counted: the third coil finds the box empty, and what would do is named', () => {
    const { at, windings } = worked({ 'cores.box': 'T50-2 x2', 'cores.coilCore': 'box' });
    const rows = at('windings.coils') as readonly { core: string; place: string }[];
    expect(rows.map(({ core, place }) => [core, place])).toEqual([
      ['T50-2', 'box'],
      ['T50-2', 'box'],
      ['T37-2', 'lacking'],
    ]);
    expect(windings.find(({ field }) => field === 'cores.box')?.try).toMatch(/L3 .*T37-2/);
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
  // 19 turns on T50-2: 49 µH for 100 turns make 1.77 µH; one turn of 19 is 1 − (18/19)² = 10 %.
  const t50 = cores.find(({ title }) => title === 'T50-2') as Core;
  const coil = {
    wanted: 1.77e-6,
    turns: 19,
    lAt: 1.77e-6,
    lBunched: 2.1e-6,
    coverage: 0.5,
    core: { ...t50, coreQ: t50.mix.coreQ },
  };
  test.each([
    [1.78e-6, /^Right/],
    [1.85e-6, /4.5 % too much: spread/],
    // √(1.77/2) of 19 turns is 17.9: one off leaves 2·(18/19)² = 1.795 µH.
    [2.0e-6, /take a turn off, for 1\.80 µH, then fix/],
    [1.7e-6, /4.0 % too little: squeeze the turns until they are spread over/],
    // T50-6 has 40 µH for 100 turns: 1.44 µH; 17 turns on T50-2 make 1.42 µH.
    [1.42e-6, /17 turns instead of 19, or T50-6 instead of T50-2/],
    // 26 turns make 3.31 µH.
    [3.3e-6, /26 turns instead of 19/],
  ])('%f H', (own, says) => {
    expect(coilAdvice({ ...coil, own }).replace(/[\u00a0\u202f]/g, ' ')).toMatch(says);
  });
  test('before it is wound: what a turn does', () => {
    // (20/19)² − 1 = 11 %.
    expect(coilAdvice({ ...coil, own: null })).toMatch(/one more turn 11/);
  });
  // A core at its low end wants more than squeezing gives where the turns fill it.
  test('a turn more where squeezing is not enough', () => {
    const full = { ...coil, lBunched: 1.8e-6, coverage: 0.9 };
    expect(coilAdvice({ ...full, own: 1.66e-6 })).toMatch(/a turn more, for 1\.84/);
  });
});

// Wheeler's own kind of example: 1 inch across, 1 inch long, 20 turns: 0.25·400/(4.5 + 10) = 6.9 µH.
test('an air coil by hand', () => {
  const turns = airCoilTurns(6.9e-6, 25.4e-3, 25.4e-3 / 20);
  expect(turns).toBeGreaterThan(19.6);
  expect(turns).toBeLessThan(20.4);
});

describe('Output and Windings have one and the same coil', () => {
  test.each([
    { 'output.match': 'pi', 'output.loadedQ': '8' },
    { 'output.lowpass': 'elliptic', 'output.order': '7' },
    { 'output.lowpass': 'chebyshev', 'output.order': '7', 'output.traps': 'both' },
    { 'cores.wire': 'AWG 26', 'cores.coilCore': 'T68-2', 'cores.tail': '2 cm' },
  ])('%o', (texts: Record<string, string>) => {
    const { at } = worked(texts);
    const pick = (path: string) =>
      (at(path) as readonly { core: string; turns: number; q: number; wire: string }[]).map(
        ({ core, turns, wire }) => [core, turns, wire],
      );
    const output = pick('output.asWound');
    expect(output.length).toBeGreaterThan(1);
    expect(pick('windings.coils').slice(0, output.length)).toEqual(output);
  });

  test('on air too', () => {
    const { at } = worked({ 'cores.coilCore': 'air', 'cores.former': '8 mm' });
    const air = at('windings.airCoils') as readonly { turns: number; q: number }[];
    const output = at('output.asWound') as readonly { turnsOnAir: number; q: number }[];
    output.forEach(({ turnsOnAir, q }, i) => {
      expect(turnsOnAir / (air[i]?.turns ?? 0)).toBeCloseTo(1, 9);
      expect(q / (air[i]?.q ?? 0)).toBeCloseTo(1, 9);
    });
    expect(at('windings.leastQ')).toBe(Math.min(...air.map(({ q }) => q)));
    expect(at('windings.coils')).toEqual([]);
  });
});
