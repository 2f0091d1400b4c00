import { bench, describe } from 'vitest';
import { couplings } from '../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import { gainAt, ladderGain } from '../../src/engine/circuit/ladderGain.ts';
import { ladderResponse } from '../../src/engine/circuit/ladderResponse.ts';
import { fitParts } from '../../src/engine/stages/filter/fitParts.ts';
import { wantedResponse } from '../../src/engine/stages/filter/wantedResponse.ts';
import { workFilter } from '../../src/engine/stages/filter/work.ts';
import { ladderNetlist } from '../reference/filter/ladderNetlist.ts';
import { simulateAc } from '../reference/simulator.ts';

const crystal = crystalOf(9e6, 14e-3, 100e3, 3.5e-12);
const lossless = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };
const { ladder, band } = ladderForWidth(crystal, couplings('chebyshev', 8, 0.1), lossless, 2400);
const points = 1001;
const from = band.low - 2400;
const to = band.high + 2400;
const frequency = Float64Array.from(
  { length: points },
  (_, i) => from + ((to - from) * i) / (points - 1),
);
const blank = () => new Float64Array(points);
const gain = blank();
const full = { gain: blank(), phase: blank(), delay: blank(), returnLoss: blank() };
const netlist = ladderNetlist(ladder, (from + to) / 2);

// To be shown: at most 0.2 ms, and a thousand times as fast as the simulator.
describe('eight crystals at 1001 frequencies', () => {
  bench('gain', () => ladderGain(ladder, frequency, gain));
  bench('gain, phase, delay and return loss', () => ladderResponse(ladder, frequency, full));
  bench(
    'the simulator on the same ladder',
    async () => {
      await simulateAc(netlist, { from, to, points });
    },
    { iterations: 5, time: 1000, warmupIterations: 1, warmupTime: 0 },
  );
});

// To be shown: at most 1.5 ms, for it is done on every change.
describe('capacitors of eight crystals chosen together', () => {
  const wanted = wantedResponse(ladder, band);
  const box = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82].flatMap((pF) =>
    [1, 10].map((by) => ({ value: pF * by * 1e-12, count: 6 })),
  );
  for (const fitting of ['e6', 'e12', 'e24', 'e6Pairs', 'e12Pairs', 'e24Pairs', 'own'] as const) {
    bench(fitting, () => {
      fitParts(ladder, wanted, fitting, box);
    });
  }
});

describe('the filter stage', () => {
  const fs = 7.2e6;
  const lm = 30e-3;
  const seen = (crystals: number) =>
    ({
      fs,
      lm,
      rm: (2 * Math.PI * fs * lm) / 70e3,
      c0: 4e-12,
      qu: 70e3,
      crystals,
      bandwidth: 2400,
      family: 'chebyshev',
      form: 'series',
      across: null,
      ripple: 0.1,
      fitted: 'e12Pairs',
      capacitorQ: 2000,
      stray: 1e-12,
      sourceResistance: null,
      loadResistance: null,
      sourceReactance: 0,
      loadReactance: 0,
      leakage: null,
      leakageDb: null,
      owned: null,
      chosen: null,
      aligning: 'design',
      bag: null,
    }) as const;
  const [six, twelve] = [seen(6), seen(12)];
  bench('one frequency', () => {
    gainAt(ladder, from);
  });
  bench('six crystals, designed for a width', () => {
    ladderForWidth(crystalOf(fs, lm, 70e3, 4e-12), couplings('chebyshev', 6, 0.1), six, 2400);
  });
  bench('six crystals, everything', () => {
    workFilter(six);
  });
  bench('twelve crystals, everything', () => {
    workFilter(twelve);
  });
});

// To be shown: at most 1.5 ms, the graph's budget. The prototype is worked once and kept.
describe('six crystals of every family, designed for a width', () => {
  const one = crystalOf(7.2e6, 30e-3, 70e3, 4e-12);
  for (const family of [
    'butterworth',
    'chebyshev',
    'bessel',
    'linear005',
    'linear05',
    'gaussian',
    'equal',
    'doubled',
  ] as const) {
    const chain = couplings(family, 6, 0.1);
    const parts = { capacitorQ: 2000, stray: 1e-12 };
    bench(family, () => {
      ladderForWidth(one, chain, parts, 1500);
    });
    if (family === 'doubled') continue;
    bench(`${family}, to ground`, () => {
      ladderForWidth(one, chain, { ...parts, form: 'shunt' }, 1500);
    });
  }
});
