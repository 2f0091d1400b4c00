import { expect, test, vi } from 'vitest';
import { bleeders, simulateAc, simulateReal, value } from './simulator.ts';

// Source: Ohm's law.
test('a resistive divider', async () => {
  const run = await simulateAc('v1 a 0 dc 0 ac 1\nr1 a b 1000\nr2 b 0 3000', {
    from: 1e6,
    to: 2e6,
    points: 3,
  });
  expect([...run.frequency]).toEqual([1e6, 1.5e6, 2e6]);
  for (const level of run.level('b')) expect(level).toBeCloseTo(20 * Math.log10(0.75), 12);
  expect(run.current('v1').re[0]).toBeCloseTo(-0.25e-3, 15);
});

// Source: impedance of a series-parallel circuit, worked with 40 decimal digits (mpmath 1.x, mp.dps = 40).
test('a crystal into a capacitive divider keeps its digits at resonance', async () => {
  const run = await simulateAc(
    `v1 a 0 dc 0 ac 1
r1 a b 50
l1 b x 0.03
r2 x y 20
c1 y c 1.628748e-14
c0 b c 4e-12
c2 c 0 20e-12
c3 c d 20e-12
c4 d 0 10e-12
${bleeders(['c', 'd'])}`,
    { from: 7.2e6, to: 7.204e6, points: 5 },
  );
  const exact = [-3.557344420731, 2.157682229933, 15.92011346568, -0.689721048176, -7.07525657396];
  const level = run.level('d');
  exact.forEach((db, i) => {
    expect(Math.abs((level[i] ?? 0) - db)).toBeLessThan(1e-7);
  });
});

// Source: closed form v(t) = 1 − exp(−t/RC).
test('a transient run', async () => {
  const run = await simulateReal(
    'v1 a 0 pulse(0 1 0 1n 1n 1 2)\nr1 a b 1k\nc1 b 0 1u ic=0',
    '.tran 10u 5m 0 1u uic',
  );
  const time = run.vector('time');
  const v = run.vector('v(b)');
  const last = time.length - 1;
  expect(v[last]).toBeCloseTo(1 - Math.exp(-(time[last] ?? 0) / 1e-3), 5);
});

test('runs asked for at once are taken in turn', async () => {
  const divider = (r2: number) =>
    simulateAc(`v1 a 0 dc 0 ac 1\nr1 a b 1k\nr2 b 0 ${value(r2)}`, {
      from: 1e6,
      to: 1e6,
      points: 1,
    });
  const levels = await Promise.all([divider(1e3), divider(9e3), divider(99e3)]);
  const ratios = levels.map((run) => run.node('b').re[0] ?? 0);
  expect(ratios[0]).toBeCloseTo(0.5, 12);
  expect(ratios[1]).toBeCloseTo(0.9, 12);
  expect(ratios[2]).toBeCloseTo(0.99, 12);
});

test('a refused netlist is an error, not the results of the run before', async () => {
  const printed = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const sweep = { from: 1e6, to: 1e6, points: 1 };
  await expect(simulateAc('v1 a 0 dc 0 ac 1\nq1 a b 0 nothing', sweep)).rejects.toThrow(/refused/);
  printed.mockRestore();
  const run = await simulateAc('v1 a 0 dc 0 ac 1\nr1 a 0 1k', sweep);
  expect(run.current('v1').re[0]).toBeCloseTo(-1e-3, 15);
});
