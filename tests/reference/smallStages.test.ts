import { expect, test } from 'vitest';
import { transistors } from '../../src/engine/data/devices.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { soundCard } from '../../src/engine/stages/transmit/smallCard.ts';
import { modelLine } from './nodalCards.ts';
import { simulateAc, simulateReal, value } from './simulator.ts';

const [first] = examples;
if (!first) throw new Error('no example');
// The air at the 27 °C for which the simulator takes its capacitances.
const rig = withEntry(first, 'plan.ambient', '27');
const worked = createEvaluator(stages)(rig);
const figure = (path: string) => Number(valueAt(worked, path));
const { frequency: f, supply } = { frequency: figure('plan.nominal'), supply: 12 };

const models = [
  modelLine('small', soundCard(transistors.n2222)),
  modelLine('speech', soundCard(transistors.c548)),
];

/** Both halves of the two-way amplifier with the sheet's typical values, written by hand. */
const twoWay = `
vcc s 0 ${supply}
${[
  ['1', 's', 'p1', 'p2'],
  ['2', '0', 'p2', 'p1'],
]
  .map(
    ([n, rail, input, output]) => `
q${n} c${n} b${n} e${n} small
ru${n} ${rail} b${n} 4700
rd${n} b${n} 0 1500
re${n} e${n} g${n} 22
rb${n} g${n} 0 220
cb${n} g${n} 0 100n
rf${n} c${n} h${n} 4700
cf${n} h${n} b${n} 100n
lc${n} c${n} ${rail} 47u
cki${n} ${input} b${n} 100n
cko${n} c${n} ${output} 100n`,
  )
  .join('\n')}`;

const speech = `
vcc s 0 ${supply}
q1 c1 b1 e1 speech
ru1 s b1 56k
rd1 b1 0 10k
re1 e1 g1 47
rb1 g1 0 1k
cb1 g1 0 22u
rc1 s c1 4.7k
ck1 p1 b1 1u
ck2 c1 b2 1u
q2 s b2 e2 speech
ru2 s b2 39k
rd2 b2 0 47k
re2 e2 0 1k
co2 e2 p2 10u`;

const linear = '.options reltol=1e-9 abstol=1e-15 vntol=1e-9';

// Source: the circuit simulator's operating points with the same model cards.
test('operating points of an example rig', async () => {
  const rows = valueAt(worked, 'transmit.biases') as readonly {
    readonly vb: number;
    readonly ve: number;
    readonly vc: number;
  }[];
  const ends = 'r1 p1 0 200\nr2 p2 0 200';
  const radio = await simulateReal([...models, twoWay, ends].join('\n'), '.op');
  const voice = await simulateReal([...models, speech, ends].join('\n'), '.op');
  for (const [row, run, n] of [
    [rows[0], voice, '1'],
    [rows[3], voice, '2'],
    [rows[6], radio, '1'],
  ] as const) {
    const at = (node: string) => run.vector(`v(${node}${n})`)[0] ?? Number.NaN;
    expect((row?.vb ?? 0) / at('b')).toBeCloseTo(1, 4);
    expect((row?.ve ?? 0) / at('e')).toBeCloseTo(1, 4);
    if (n === '1') expect((row?.vc ?? 0) / at('c')).toBeCloseTo(1, 4);
  }
});

// Source: the circuit simulator, which finds operating point and slopes itself.
test('gain and input of the two-way amplifier of an example rig', async () => {
  const run = await simulateAc(
    [
      ...models,
      linear,
      twoWay,
      'vin i 0 dc 0 ac 1',
      `rs i p1 ${value(figure('transmit.modulatorImpedance'))}`,
      `rl p2 0 ${value(figure('transmit.amplifierLoad'))}`,
    ].join('\n'),
    { from: f, to: f, points: 1 },
  );
  const phasor = (node: string) => {
    const { re, im } = run.node(node);
    return { re: re[0] ?? 0, im: im[0] ?? 0 };
  };
  const [v, out] = [phasor('p1'), phasor('p2')];
  const rs = figure('transmit.modulatorImpedance');
  // Admittance looking in: current over voltage.
  const square = v.re ** 2 + v.im ** 2;
  const g = ((1 - v.re) * v.re - v.im * v.im) / rs / square;
  const b = (-v.im * v.re - (1 - v.re) * v.im) / rs / square;
  expect(figure('transmit.amplifierInput') * g).toBeCloseTo(1, 4);
  expect(figure('transmit.amplifierInputC') / (b / (2 * Math.PI * f))).toBeCloseTo(1, 4);
  const power = (out.re ** 2 + out.im ** 2) / figure('transmit.amplifierLoad') / (square * g);
  expect(figure('transmit.amplifierGain')).toBeCloseTo(10 * Math.log10(power), 3);
});

// Source: the circuit simulator at 1 kHz.
test('gain and input of the microphone amplifier of an example rig', async () => {
  const run = await simulateAc(
    [...models, linear, speech, 'vin p1 0 dc 0 ac 1', 'rl p2 0 200'].join('\n'),
    { from: 1000, to: 1000, points: 1 },
  );
  const { re, im } = run.node('p2');
  const gain = 20 * Math.log10(Math.hypot(re[0] ?? 0, im[0] ?? 0));
  expect(Math.abs(figure('transmit.micStageGain') - gain)).toBeLessThan(0.01);
  const current = run.current('vin');
  const g = -(current.re[0] ?? 0);
  expect(figure('transmit.micLoad') * g).toBeCloseTo(1, 3);
});

// The same figures typed by hand as on the list must give the same stage.
test('a transistor of one’s own with the figures of a listed one is that one', () => {
  const { hfe, ft, cob, base, small } = transistors.n3904;
  const typed: Record<string, string> = {
    amplifierDevice: 'own',
    ownSmallHfeLeast: String(hfe[0]),
    ownSmallHfe: String(hfe[1]),
    ownSmallHfeMost: String(small.hfeMost),
    ownSmallTransit: String(ft),
    ownSmallTransitAmps: String(small.ftAt[0]),
    ownSmallTransitVolts: String(small.ftAt[1]),
    ownSmallCob: String(cob),
    ownSmallCobVolts: String(small.cobAt),
    ownSmallCib: String(small.cib[0]),
    ownSmallVbe: String(small.vbe[0]),
    ownSmallVbeAmps: String(small.vbe[1]),
    ownSmallEarly: String(small.early),
    ownSmallBase: String(base),
  };
  const own = Object.entries(typed).reduce(
    (r, [key, text]) => withEntry(r, `transmit.${key}`, text),
    rig,
  );
  const listed = withEntry(rig, 'transmit.amplifierDevice', 'n3904');
  const evaluate = createEvaluator(stages);
  const [a, b] = [evaluate(own), evaluate(listed)];
  for (const key of ['Gain', 'Input', 'Output', 'Noise', 'Clip', 'K']) {
    const path = `transmit.amplifier${key}`;
    expect(Number(valueAt(a, path)), key).toBeCloseTo(Number(valueAt(b, path)), 9);
  }
});
