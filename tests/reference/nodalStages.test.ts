import { describe, expect, test } from 'vitest';
import { type BiasResistors, biasPoint } from '../../src/engine/circuit/amplifier/biasPoint.ts';
import { biasOf, type CommonEmitter } from '../../src/engine/circuit/amplifier/commonEmitter.ts';
import {
  emitterFollower,
  followerBias,
  typicalEmitterFollower,
} from '../../src/engine/circuit/amplifier/emitterFollower.ts';
import {
  type HybridPi,
  hybridPi,
  hybridPiOff,
} from '../../src/engine/circuit/amplifier/hybridPi.ts';
import {
  microphoneAmplifier,
  typicalMicrophoneAmplifier,
} from '../../src/engine/circuit/amplifier/microphoneAmplifier.ts';
import {
  postFilterAmplifier,
  typicalPostFilterAmplifier,
} from '../../src/engine/circuit/amplifier/postFilterAmplifier.ts';
import type { StageCircuit } from '../../src/engine/circuit/amplifier/stageCircuit.ts';
import { closeStage, stageFigures } from '../../src/engine/circuit/amplifier/stageFigures.ts';
import {
  transformerDriver,
  typicalTransformerDriver,
} from '../../src/engine/circuit/amplifier/transformerDriver.ts';
import { cardAt, type TransistorCard } from '../../src/engine/circuit/amplifier/transistorCard.ts';
import {
  twoWayAmplifier,
  typicalTwoWayAmplifier,
} from '../../src/engine/circuit/amplifier/twoWayAmplifier.ts';
import { netlist } from '../../src/engine/circuit/nodal/netlist.ts';
import { cards, modelLine } from './nodalCards.ts';
import { nodalNetlist } from './nodalNetlist.ts';
import { type AcRun, bleeders, simulateAc, value } from './simulator.ts';

const none = Number.POSITIVE_INFINITY;
const KELVIN = 300.15;
const SUPPLY = 12;

/** A stage: its circuit as the engine builds it, and written by hand with the whole transistor. */
interface Case {
  readonly name: string;
  readonly card: TransistorCard;
  readonly bias: BiasResistors;
  readonly circuit: (pi: HybridPi, off: HybridPi) => StageCircuit;
  /** Ports are `p1` and `p2`, the supply node is `s`. */
  readonly byHand: string;
  readonly ends: readonly [number, number];
  readonly frequencies: readonly number[];
}

const r = (name: string, a: string, b: string, ohms: number) =>
  ohms === none ? '' : `r${name} ${a} ${b} ${value(ohms)}`;
const c = (name: string, a: string, b: string, farads: number) =>
  `c${name} ${a} ${b} ${value(farads)}`;

/** A common-emitter stage by hand, fed from the node `feed`; `x` keeps names of two apart. */
function half(x: string, base: string, collector: string, feed: string, p: CommonEmitter): string {
  return [
    `q${x} ${collector} ${base} e${x} q`,
    r(`u${x}`, p.from === 'supply' ? feed : collector, base, p.upper),
    r(`l${x}`, base, '0', p.lower),
    r(`e${x}`, `e${x}`, `f${x}`, p.emitter),
    r(`b${x}`, `f${x}`, '0', p.bridged),
    c(`b${x}`, `f${x}`, '0', p.bridge),
    p.feedback < none ? r(`f${x}`, collector, `g${x}`, p.feedback) : '',
    p.feedback < none ? c(`f${x}`, `g${x}`, base, p.feedbackC) : '',
    p.feed > 0 ? r(`c${x}`, collector, p.choke > 0 ? `h${x}` : feed, p.feed) : '',
    p.choke > 0 ? `l${x} ${p.feed > 0 ? `h${x}` : collector} ${feed} ${value(p.choke)}` : '',
  ].join('\n');
}

const mic = typicalMicrophoneAmplifier;
const follower = typicalEmitterFollower;
const two = typicalTwoWayAmplifier;
const post = typicalPostFilterAmplifier;
const driver = typicalTransformerDriver;
const speech = [100, 300, 1000, 3000, 20e3];
const radio = [1e5, 1e6, 3.7e6, 9e6, 14.2e6, 30e6];

const cases: readonly Case[] = [
  {
    name: 'microphone amplifier',
    card: cards.audio,
    bias: biasOf(mic, SUPPLY),
    circuit: (pi) => microphoneAmplifier(mic, pi),
    byHand: [
      c('i', 'p1', 'b', mic.inputC),
      half('1', 'b', 'c', 's', mic),
      c('o', 'c', 'p2', mic.outputC),
    ].join('\n'),
    ends: [600, 10e3],
    frequencies: speech,
  },
  {
    name: 'emitter follower',
    card: cards.audio,
    bias: followerBias(follower, SUPPLY),
    circuit: (pi) => emitterFollower(follower, pi),
    byHand: [
      c('i', 'p1', 'b', follower.inputC),
      r('u', 's', 'b', follower.upper),
      r('l', 'b', '0', follower.lower),
      'q1 s b e q',
      r('e', 'e', '0', follower.emitter),
      c('o', 'e', 'p2', follower.outputC),
    ].join('\n'),
    ends: [4700, 200],
    frequencies: [...speech, 1e6],
  },
  ...(['all', 'transistor', 'nothing'] as const).map((asleep): Case => {
    const whole = [
      c('o2', 'b2', 'p2', two.coupling),
      c('i2', 'p1', 'c2', two.coupling),
      half('2', 'b2', 'c2', '0', two),
    ];
    const bare = [
      'q2 p1 p2 e2 q',
      r('e2', 'e2', 'f2', two.emitter),
      r('f2', 'f2', '0', two.bridged),
      c('f2', 'f2', '0', two.bridge),
    ];
    const sleeping = { all: whole, transistor: bare, nothing: [] }[asleep].join('\n');
    return {
      name: `two-way amplifier, of the sleeping half ${asleep}`,
      card: cards.switching,
      bias: biasOf(two, SUPPLY),
      circuit: (pi, off) => twoWayAmplifier({ ...two, asleep }, pi, off),
      byHand: [
        c('i1', 'p1', 'b1', two.coupling),
        half('1', 'b1', 'c1', 's', two),
        c('o1', 'c1', 'p2', two.coupling),
        sleeping,
      ].join('\n'),
      ends: [200, 200],
      frequencies: radio,
    };
  }),
  {
    name: 'amplifier behind the filter',
    card: cards.switching,
    bias: biasOf(post, SUPPLY),
    circuit: (pi) => postFilterAmplifier(post, pi),
    byHand: [
      c('i', 'p1', 'b', post.inputC),
      half('1', 'b', 'c', 's', post),
      c('o', 'c', 'p2', post.outputC),
    ].join('\n'),
    ends: [200, 200],
    frequencies: radio,
  },
  {
    name: 'driver with transformer',
    card: cards.switching,
    bias: biasOf(driver, SUPPLY),
    circuit: (pi) => transformerDriver(driver, pi),
    byHand: [
      c('i', 'p1', 'b', driver.inputC),
      half('1', 'b', 'c', 's', driver),
      `lp c s ${value(driver.primary)}`,
      `ls p2 0 ${value(driver.primary / driver.turns ** 2)}`,
      `kt lp ls ${value(Math.sqrt(1 - driver.leakage))}`,
      r('core', 'c', 's', driver.core),
    ].join('\n'),
    ends: [200, 10],
    frequencies: radio,
  },
];

/** Largest differences found, dB and a share. */
interface Worst {
  gain: number;
  impedance: number;
  stability: number;
}

/** The simulator's gain and impedances of a circuit with ports `p1`, `p2` at one frequency. */
async function theirs(elements: string, ends: readonly [number, number], f: number) {
  const at = { from: f, to: f, points: 1 };
  const run = async (fromFirst: boolean) =>
    simulateAc(
      [
        elements,
        `idrive 0 ${fromFirst ? 'p1' : 'p2'} dc 0 ac 1`,
        r('end1', 'p1', '0', ends[0]),
        r('end2', 'p2', '0', ends[1]),
        'vice p1 0x dc 0',
        'rice 0x 0 1e15',
      ].join('\n'),
      at,
    );
  const phasor = (run: AcRun, node: string) => {
    const { re, im } = run.node(node);
    return { re: re[0] ?? 0, im: im[0] ?? 0 };
  };
  const forward = await run(true);
  const backward = await run(false);
  const [v1, v2] = [phasor(forward, 'p1'), phasor(forward, 'p2')];
  const [w1, w2] = [phasor(backward, 'p1'), phasor(backward, 'p2')];
  // A port takes what the closing resistor beside it leaves of the ampere that is driven in.
  const port = (v: { re: number; im: number }, end: number) => {
    const [re, im] = [1 - v.re / end, -v.im / end];
    const size = re * re + im * im;
    return { re: (v.re * re + v.im * im) / size, im: (v.im * re - v.re * im) / size };
  };
  const square = v2.re ** 2 + v2.im ** 2;
  return {
    // 1 A and its resistance could give 1 A²·R/4 at most.
    gain: 10 * Math.log10(square / ends[1] / (ends[0] / 4)),
    voltage: 20 * Math.log10(Math.sqrt(square) / Math.hypot(v1.re, v1.im)),
    input: port(v1, ends[0]),
    output: port(w2, ends[1]),
    stability: stabilityOf([v1, w1, v2, w2], ends),
  };
}

type Phasor = { readonly re: number; readonly im: number };

/** Rollett's factor by admittances (his eq. 2), from the voltages that an ampere at each port makes. */
function stabilityOf(
  [v1, w1, v2, w2]: readonly [Phasor, Phasor, Phasor, Phasor],
  ends: readonly [number, number],
): number {
  const times = (a: Phasor, b: Phasor) => ({
    re: a.re * b.re - a.im * b.im,
    im: a.re * b.im + a.im * b.re,
  });
  const over = (a: Phasor, b: Phasor) => {
    const size = b.re ** 2 + b.im ** 2;
    return times(a, { re: b.re / size, im: -b.im / size });
  };
  const [one, two] = [times(v1, w2), times(w1, v2)];
  const determinant = { re: one.re - two.re, im: one.im - two.im };
  const y11 = over(w2, determinant).re - 1 / ends[0];
  const y22 = over(v1, determinant).re - 1 / ends[1];
  const loop = over(over(two, determinant), determinant);
  return (2 * y11 * y22 - loop.re) / Math.hypot(loop.re, loop.im);
}

async function compare(one: Case, elements: string): Promise<Worst> {
  const card = cardAt(one.card, KELVIN);
  const bias = biasPoint(one.bias, card, KELVIN);
  const circuit = one.circuit(hybridPi(card, KELVIN, bias), hybridPiOff(card));
  const two = closeStage(circuit, one.ends);
  const worst = { gain: 0, impedance: 0, stability: 0 };
  for (const f of one.frequencies) {
    const ours = stageFigures(circuit, two, f, bias, 0.3);
    const other = await theirs(elements, one.ends, f);
    if (!ours) throw new Error('no answer');
    const gain = 10 * Math.log10(ours.transducerGain);
    const voltage = 20 * Math.log10(Math.hypot(ours.voltageGain.re, ours.voltageGain.im));
    worst.gain = Math.max(
      worst.gain,
      Math.abs(gain - other.gain),
      Math.abs(voltage - other.voltage),
    );
    worst.stability = Math.max(worst.stability, Math.abs(ours.stability / other.stability - 1));
    for (const end of ['input', 'output'] as const) {
      const [mine, its] = [ours[end], other[end]];
      const off = Math.hypot(mine.re - its.re, mine.im - its.im) / Math.hypot(its.re, its.im);
      worst.impedance = Math.max(worst.impedance, off);
    }
  }
  return worst;
}

/** The engine's own netlist in the simulator's words, its ports named. */
function asLinear(one: Case): string {
  const card = cardAt(one.card, KELVIN);
  const bias = biasPoint(one.bias, card, KELVIN);
  const { net, ports } = one.circuit(hybridPi(card, KELVIN, bias), hybridPiOff(card));
  const nodes = [...Array(net.nodes).keys()].map((i) => `n${i + 1}`);
  expect(net.parts).toBeLessThanOrEqual(netlist().kind.length - 2);
  return [
    nodalNetlist(net),
    bleeders(nodes),
    `vp1 p1 n${ports[0]} 0`,
    `vp2 p2 n${ports[1]} 0`,
  ].join('\n');
}

describe.each(cases.map((one) => [one.name, one] as const))('%s', (_, one) => {
  test('the same linear circuit in the simulator: 0.01 dB and 0.1 %', async () => {
    const worst = await compare(one, asLinear(one));
    expect(worst.gain).toBeLessThan(1e-5);
    expect(worst.impedance).toBeLessThan(1e-5);

    expect(worst.stability).toBeLessThan(1e-3);
  });

  test('the whole transistor in the simulator, which finds bias and slopes itself', async () => {
    const elements = [
      modelLine('q', one.card),
      `vcc s 0 ${SUPPLY}`,
      '.options reltol=1e-9 abstol=1e-15 vntol=1e-9',
      one.byHand,
    ].join('\n');
    const worst = await compare(one, elements);
    // Asked for: 0.01 dB and 0.1 %.
    expect(worst.gain).toBeLessThan(1e-5);
    expect(worst.impedance).toBeLessThan(1e-5);

    expect(worst.stability).toBeLessThan(1e-3);
  });
});
