import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { halfWave } from '../../src/engine/circuit/halfWave.ts';
import { ladderTransfer, TRANSFER_SIZE } from '../../src/engine/circuit/ladderTransfer.ts';
import { aroundCircle, ROUND } from '../../src/engine/circuit/mismatch/aroundCircle.ts';
import { chainWaves, WAVES_SIZE } from '../../src/engine/circuit/mismatch/chainWaves.ts';
import { harmonicRise } from '../../src/engine/circuit/mismatch/harmonicRise.ts';
import { CHAIN_SIZE, networkChain } from '../../src/engine/circuit/mismatch/networkChain.ts';
import { capacitor, coil, type OutputLadder } from '../../src/engine/circuit/outputLadder.ts';
import { simulateAc, value } from './simulator.ts';

const MHz = 1e6;

/** Seven elements and a step-up transformer, as one might build them for 7.2 MHz. */
const built: OutputLadder = {
  branches: [
    capacitor('shunt', 390e-12, 1000),
    coil('series', 1.27e-6, 150, 2e-12),
    capacitor('shunt', 750e-12, 1000),
    coil('series', 1.44e-6, 150, 2e-12),
    capacitor('shunt', 750e-12, 1000),
    { place: 'series', l: 1.27e-6, c: 33e-12, ql: 150, qc: 1000 },
    capacitor('shunt', 390e-12, 1000),
  ],
  ratio: 1.5,
  sourceResistance: Number.POSITIVE_INFINITY,
  sourceCapacitance: 0,
  load: 50,
  reference: 7.2 * MHz,
};

const final = {
  supply: 12,
  fundamental: 0.4,
  dcCurrent: 0.26,
  quiescent: 0.05,
  collectorLoad: 24,
  sides: 1,
} as const;

function wavesAt(ladder: OutputLadder, frequency: number, across = 0) {
  const chain = new Float64Array(CHAIN_SIZE);
  const waves = new Float64Array(WAVES_SIZE);
  networkChain(ladder, frequency, chain);
  chainWaves(chain, across, waves);
  return waves;
}

const rhoOf = (swr: number) => (swr - 1) / (swr + 1);

/** Resistance and reactance of an antenna of 50 Ω times (1 + Γ)/(1 − Γ). */
function antennaAt(swr: number, angle: number) {
  const rho = rhoOf(swr);
  const [x, y] = [rho * Math.cos(angle), rho * Math.sin(angle)];
  const size = (1 - x) ** 2 + y * y;
  return { r: (50 * (1 - rho * rho)) / size, x: (100 * y) / size };
}

describe('chain matrix', () => {
  test('agrees with the ladder followed from the load, for any resistance', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (load, f) => {
          const chain = new Float64Array(CHAIN_SIZE);
          networkChain(built, f * MHz, chain);
          const [ar = 0, ai = 0, br = 0, bi = 0, cr = 0, ci = 0, dr = 0, di = 0] = chain;
          const out = new Float64Array(TRANSFER_SIZE);
          ladderTransfer({ ...built, load }, f * MHz, out);
          const y = 50 / load;
          const [ir, ii] = [(cr + dr * y) / 50, (ci + di * y) / 50];
          const [vr, vi] = [ar + br * y, ai + bi * y];
          const fed = 1 / Math.hypot(ir, ii);
          expect(fed / Math.hypot(out[0] ?? 0, out[1] ?? 0)).toBeCloseTo(1, 10);
          const size = ir * ir + ii * ii;
          const scale = Math.hypot(out[2] ?? 0, out[3] ?? 0);
          expect(((vr * ir + vi * ii) / size - (out[2] ?? 0)) / scale).toBeCloseTo(0, 9);
          expect(((vi * ir - vr * ii) / size - (out[3] ?? 0)) / scale).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  // Closed form: passive parts are reciprocal, AD − BC = 1.
  test('has determinant one', () => {
    for (const f of [1, 7.2, 14.4, 50, 100]) {
      const chain = new Float64Array(CHAIN_SIZE);
      networkChain(built, f * MHz, chain);
      const [ar = 0, ai = 0, br = 0, bi = 0, cr = 0, ci = 0, dr = 0, di = 0] = chain;
      const size = Math.hypot(ar, ai) * Math.hypot(dr, di) + 1;
      expect((ar * dr - ai * di - br * cr + bi * ci - 1) / size).toBeCloseTo(0, 12);
      expect((ar * di + ai * dr - br * ci - bi * cr) / size).toBeCloseTo(0, 12);
    }
  });

  // Closed form: half a wavelength shows its load again, turned in phase: A = D = −1, B = C = 0.
  test('of a lossless half-wave section is minus one', () => {
    const chain = new Float64Array(CHAIN_SIZE);
    const { l, c } = halfWave(50, 7 * MHz);
    const lossless = Number.POSITIVE_INFINITY;
    networkChain(
      {
        ...built,
        branches: [
          capacitor('shunt', c, lossless),
          coil('series', l, lossless),
          capacitor('shunt', c, lossless),
        ],
        ratio: 1,
        reference: 7 * MHz,
      },
      7 * MHz,
      chain,
    );
    expect([...chain].map((x) => Math.round(x * 1e9) / 1e9 + 0)).toEqual([0, 0, 0, 1, 0, 1, 0, 0]);
  });
});

describe('around the circle', () => {
  // Closed form: two half-wave sections repeat any load: the collector sees the antenna itself, and
  // a current source I gives ½·I²·Re Z, as far as the supply lets it.
  test('two lossless half-wave sections repeat the load', () => {
    const { l, c } = halfWave(50, 7 * MHz);
    const inf = Number.POSITIVE_INFINITY;
    const two: OutputLadder = {
      ...built,
      branches: [
        capacitor('shunt', c, inf),
        coil('series', l, inf),
        capacitor('shunt', 2 * c, inf),
        coil('series', l, inf),
        capacitor('shunt', c, inf),
      ],
      ratio: 1,
      reference: 7 * MHz,
    };
    const waves = wavesAt(two, 7 * MHz);
    const at = { ...final, collectorLoad: 1e9 };
    const around = aroundCircle(waves, waves, 50, rhoOf(2.5), at);
    for (let k = 0; k <= ROUND; k += 1) {
      const { r, x } = antennaAt(2.5, (k * Math.PI) / 36);
      expect(around.resistance[k]).toBeCloseTo(r, 8);
      expect(around.reactance[k]).toBeCloseTo(x, 8);
      expect(around.loss[k]).toBeCloseTo(0, 9);
      expect(around.power[k]).toBeCloseTo((0.4 ** 2 * r) / 2, 9);
    }
    // R·SWR at 0°, R/SWR at 180°, inductive in between.
    expect(around.resistance[0]).toBeCloseTo(125, 8);
    expect(around.resistance[36]).toBeCloseTo(20, 8);
    expect(around.reactance[18]).toBeGreaterThan(0);
  });

  // Source: circuit simulator, AC analysis of the same parts at one frequency.
  test.each([
    [1.5, 40, 1],
    [2, 135, 1],
    [3, 250, 1],
    [2, 300, 2],
    [3, 90, 3],
  ])('SWR %d at %d°, harmonic %d, as the simulator has it', async (swr, degrees, n) => {
    const f = n * 7.2 * MHz;
    const angle = (degrees * Math.PI) / 180;
    const { r, x } = antennaAt(swr, angle);
    const w = 2 * Math.PI * f;
    const lines = ['i1 0 s dc 0 ac 1', 'ro s 0 90', 'et p 0 s 0 1.5', 'vt p n0 0', 'ft s 0 vt 1.5'];
    // Ideal transformer: current into its primary is 1.5 times that of the secondary.
    let node = 'n0';
    built.branches.forEach(({ place, l, c, ql, qc }, k) => {
      const far = place === 'series' ? `m${k}` : '0';
      if (l > 0) {
        const loss = ((2 * Math.PI * 7.2 * MHz * l) / ql) * Math.sqrt(n);
        lines.push(`l${k} ${node} x${k} ${value(l)}`, `rl${k} x${k} ${far} ${value(loss)}`);
      }
      if (c > 0) lines.push(`c${k} ${node} ${far} ${value(c)}`);
      if (c > 0 && Number.isFinite(qc)) lines.push(`rc${k} ${node} ${far} ${value(qc / (w * c))}`);
      if (place === 'series') node = far;
    });
    lines.push(`rant ${node} z ${value(r)}`);
    lines.push(x >= 0 ? `lant z 0 ${value(x / w)}` : `cant z 0 ${value(-1 / (w * x))}`);
    lines.push('rb z 0 1e12');
    const netlist = lines.join('\n');
    const run = await simulateAc(netlist, { from: f, to: f, points: 1 });
    const [end, z] = [run.node(node), run.node('z')];
    const current =
      Math.hypot((end.re[0] ?? 0) - (z.re[0] ?? 0), (end.im[0] ?? 0) - (z.im[0] ?? 0)) / r;
    const simulated = (current ** 2 * r) / 2;
    const rho = rhoOf(swr);
    const waves = wavesAt(built, f);
    const loaded = wavesAt(built, f, 50 / 90);
    const around = aroundCircle(waves, loaded, 50, rho, final);
    const ours = ((around.gain[degrees / 5] ?? 0) * 50) / 2;
    expect(Math.abs(10 * Math.log10(ours / simulated))).toBeLessThan(0.01);
  });
});

describe('bounds of a harmonic', () => {
  test('nothing on the circle, and no antenna at all, takes more; and the bounds are reached', () => {
    for (const n of [1, 2, 3, 5]) {
      const f = n * 7.2 * MHz;
      for (const swr of [1.2, 2, 3]) {
        const loaded = wavesAt(built, f, 50 / 90);
        const rise = harmonicRise(loaded, rhoOf(swr));
        const around = aroundCircle(wavesAt(built, f), loaded, 50, rhoOf(swr), final);
        const most = 10 * Math.log10(Math.max(...around.gain) / rise.plain);
        expect(most).toBeLessThanOrEqual(rise.same + 1e-9);
        // Where the output reflects less than the antenna, a smaller ratio takes most.
        if (rise.back >= rhoOf(swr)) expect(most).toBeGreaterThan(rise.same - 0.02);
        expect(rise.same).toBeLessThanOrEqual((rise.any ?? 999) + 1e-9);
      }
    }
  });

  // Closed form: looking back into pure reactance nothing but the antenna's SWR bounds the rise.
  test('is the SWR itself where the output is lossless', () => {
    const lossless = Number.POSITIVE_INFINITY;
    const ladder: OutputLadder = {
      ...built,
      branches: [capacitor('shunt', 1e-9, lossless)],
      ratio: 1,
    };
    const rise = harmonicRise(wavesAt(ladder, 14.4 * MHz), rhoOf(3));
    expect(rise.back).toBeCloseTo(1, 12);
    expect(rise.any).toBeNull();
    expect(rise.same).toBeCloseTo(10 * Math.log10(3), 9);
  });
});
