import { describe, expect, test } from 'vitest';
import { type BiasResistors, biasPoint } from '../../src/engine/circuit/amplifier/biasPoint.ts';
import { cardAt, type TransistorCard } from '../../src/engine/circuit/amplifier/transistorCard.ts';
import { cards, modelLine } from './nodalCards.ts';
import { simulateReal, value } from './simulator.ts';

const none = Number.POSITIVE_INFINITY;

/** The simulator's operating point of the same resistors and model card. */
async function simulated(r: BiasResistors, card: TransistorCard, kelvin: number) {
  const line = (name: string, a: string, b: string, ohms: number) =>
    ohms === none ? '' : ohms === 0 ? `v${name} ${a} ${b} 0` : `r${name} ${a} ${b} ${value(ohms)}`;
  const run = await simulateReal(
    [
      modelLine('q', card),
      `vcc s 0 ${value(r.supply)}`,
      line('up', r.from === 'supply' ? 's' : 'c', 'b', r.upper),
      line('low', 'b', '0', r.lower),
      line('e', 'e', '0', r.emitter),
      line('c', 's', 'c', r.collector),
      'vic c cc 0',
      'vib b bb 0',
      'q1 cc bb e q',
    ].join('\n'),
    '.op',
    `reltol=1e-9 abstol=1e-15 vntol=1e-9 temp=${value(kelvin - 273.15)}`,
  );
  const one = (name: string) => run.vector(name)[0] ?? Number.NaN;
  return {
    ic: one('i(vic)'),
    ib: one('i(vib)'),
    base: one('v(b)'),
    emitter: r.emitter === 0 ? 0 : one('v(e)'),
    collector: one('v(c)'),
    drawn: -one('i(vcc)'),
  };
}

const circuits: readonly (readonly [string, BiasResistors])[] = [
  [
    'divider and emitter resistor, microphone amplifier',
    { supply: 12, from: 'supply', upper: 56e3, lower: 10e3, emitter: 1100, collector: 4700 },
  ],
  [
    'divider and emitter resistor, driver, collector on a transformer',
    { supply: 12, from: 'supply', upper: 1500, lower: 470, emitter: 57, collector: 0 },
  ],
  [
    'one resistor from collector to base',
    { supply: 12, from: 'collector', upper: 220e3, lower: none, emitter: 0, collector: 2200 },
  ],
  [
    'two resistors from the collector',
    { supply: 12, from: 'collector', upper: 2700, lower: 680, emitter: 110, collector: 560 },
  ],
  [
    'emitter follower',
    { supply: 12, from: 'supply', upper: 39e3, lower: 47e3, emitter: 1000, collector: 0 },
  ],
  [
    'a single base resistor from the supply, no emitter resistor',
    { supply: 9, from: 'supply', upper: 1e6, lower: none, emitter: 0, collector: 2200 },
  ],
];

describe.each(circuits)('%s', (_, resistors) => {
  test.each([
    ['switching', 300.15],
    ['audio', 263.15],
    ['full', 343.15],
  ] as const)('card %s at %d K', async (name, kelvin) => {
    const card = cards[name];
    const theirs = await simulated(resistors, card, kelvin);
    const ours = biasPoint(resistors, cardAt(card, kelvin), kelvin);
    // Asked for: 1 %. The equations are the same, so far less is left.
    const off = (mine: number, other: number) => Math.abs(mine / other - 1);
    expect(off(ours.collectorCurrent, theirs.ic)).toBeLessThan(1e-5);
    expect(off(ours.baseCurrent, theirs.ib)).toBeLessThan(1e-4);
    expect(off(ours.collector, theirs.collector)).toBeLessThan(1e-5);
    expect(off(ours.base, theirs.base)).toBeLessThan(1e-5);
    if (resistors.emitter > 0) expect(off(ours.emitter, theirs.emitter)).toBeLessThan(1e-5);
    expect(off(ours.drawn, theirs.drawn)).toBeLessThan(1e-5);
  });
});

describe('what everybody knows of a junction', () => {
  const card = cards.switching;

  test('at constant current its voltage falls by about 2 mV a kelvin', () => {
    // A stiff current: 10 V across 10 kΩ, collector to base. Handbook: −2 to −2.2 mV/K.
    const r: BiasResistors = {
      supply: 10,
      from: 'collector',
      upper: 1,
      lower: none,
      emitter: 0,
      collector: 10e3,
    };
    const at = (kelvin: number) => biasPoint(r, cardAt(card, kelvin), kelvin).vbe;
    const slope = (at(305) - at(295)) / 10;
    expect(slope).toBeLessThan(-1.8e-3);
    expect(slope).toBeGreaterThan(-2.3e-3);
  });

  test('saturation is told', () => {
    const r: BiasResistors = {
      supply: 12,
      from: 'supply',
      upper: 10e3,
      lower: none,
      emitter: 0,
      collector: 2200,
    };
    expect(biasPoint(r, card, 300.15).saturated).toBe(true);
  });

  test.each([
    [1, 1e-3, 1e12],
    [1e-3, 1e9, 1e-3],
    [100, 1, none],
    [0, 1000, 1000],
  ])('no NaN for a supply of %d V, %d Ω above and %d Ω below', (supply, upper, lower) => {
    for (const from of ['supply', 'collector'] as const) {
      for (const emitter of [0, 1e-3, 1e6]) {
        const point = biasPoint({ supply, from, upper, lower, emitter, collector: 0 }, card, 250);
        for (const figure of Object.values(point)) expect(figure).not.toBeNaN();
      }
    }
  });
});
