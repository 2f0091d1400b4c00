import { describe, expect, test } from 'vitest';
import { coupledGain, coupledLadder } from '../../src/engine/circuit/coupledCircuits.ts';
import { designFront, type FrontAsked } from '../../src/engine/stages/front/design.ts';
import { simulateAc } from './simulator.ts';

const asked: FrontAsked = {
  nominal: 7.1e6,
  circuits: 2,
  width: 284e3,
  coil: 2.69e-6,
  coilQ: 120,
  end: 50,
  fitted: 'exact',
};

function made(more: Partial<FrontAsked> = {}) {
  const answer = designFront({ ...asked, ...more });
  if ('refusal' in answer) throw new Error(answer.refusal);
  return answer.network;
}

describe('the band-pass of coupled circuits', () => {
  // ngspice, the same parts: coils lose by a resistance that suits one frequency at a time.
  test.each([
    [2, 4.9e6],
    [2, 7.1e6],
    [2, 7.3e6],
    [2, 9e6],
    [2, 16.1e6],
    [3, 6.9e6],
    [3, 7.1e6],
    [3, 25.1e6],
  ] as const)('%i circuits at %f Hz as the simulator has it', async (circuits, frequency) => {
    const n = made({ circuits });
    const r = ((2 * Math.PI * n.nominal * n.coil) / n.coilQ) * Math.sqrt(frequency / n.nominal);
    const circuit = (node: string, c: number) =>
      `L${node} ${node} m${node} ${n.coil}\nR${node} m${node} 0 ${r}\nC${node} ${node} 0 ${c}`;
    const net = [
      'V1 in 0 AC 1',
      `Rs in a ${n.end}`,
      `Cf1 a b ${n.feed}`,
      circuit('b', n.endC),
      circuits === 3
        ? `Ck1 b c ${n.couple}\n${circuit('c', n.middleC)}\nCk2 c d ${n.couple}`
        : `Ck1 b d ${n.couple}`,
      circuit('d', n.endC),
      `Cf2 d e ${n.feed}`,
      `Rload e 0 ${n.end}`,
      'Rbleed a 0 1e15',
    ].join('\n');
    const run = await simulateAc(net, { from: frequency, to: frequency, points: 1 });
    const { re, im } = run.node('e');
    const gain = 20 * Math.log10(2 * Math.hypot(re[0] ?? 0, im[0] ?? 0));
    expect(coupledGain(coupledLadder(n), frequency)).toBeCloseTo(gain, 3);
  });

  // Butterworth, without loss: 3 dB at the edges, 0 dB in the middle. Coupling by capacitors is
  // narrow-band, so the middle and the width are met within a few hundredths of the width.
  test.each([2, 3] as const)('%i circuits without loss are as wide as asked', (circuits) => {
    const n = made({ circuits, coilQ: 1e9 });
    const ladder = coupledLadder(n);
    expect(coupledGain(ladder, 7.1e6)).toBeGreaterThan(-0.05);
    const edge = (way: 1 | -1) => {
      let f = 7.1e6;
      while (coupledGain(ladder, f) > -3.0103) f += way * 200;
      return f;
    };
    expect((edge(1) - edge(-1)) / 284e3).toBeCloseTo(1, 1);
  });

  // Dissipation of a band-pass at its middle: 4.343·Σg·f₀/(B·Q) dB (Cohn, 1959), for small losses.
  test('loses what its coils make it lose', () => {
    const loss = -coupledGain(coupledLadder(made({ coilQ: 1000 })), 7.1e6);
    expect(loss).toBeCloseTo((4.343 * (2 * Math.SQRT2) * 25) / 1000, 1);
  });

  test('refuses what coils can’t do, with the width that they can', () => {
    const answer = designFront({ ...asked, width: 60e3 });
    expect(answer).toMatchObject({ refusal: 'lossy' });
    if ('refusal' in answer && answer.refusal === 'lossy') {
      expect(answer.least).toBeCloseTo((Math.SQRT2 * 7.1e6) / 108, 0);
      expect('network' in designFront({ ...asked, width: answer.least * 1.01 })).toBe(true);
    }
  });
});
