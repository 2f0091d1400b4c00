import { describe, expect, test } from 'vitest';
import { balanceDesk } from '../../../src/engine/circuit/power/balanceDesk.ts';
import { gummelPoonAt } from '../../../src/engine/circuit/power/gummelPoonAt.ts';
import { operatingPoint } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { cardOf } from '../../../src/engine/stages/power/cardOf.ts';
import { readCard } from '../../../src/engine/stages/power/readCard.ts';
import { simulateReal } from '../simulator.ts';

const written = `* a card as makers write them
.MODEL MINE NPN (IS=2.5E-13 BF=90 NF=1.01 VAF=60
+ IKF=900M ISE=3p NE=1.6   ; leakage
+ BR=4, RB=3.3 RE=50MOHM RC=0.15
+ CJE=200PF VJE=0.74 MJE=.36 CJC=40P VJC=0.55 MJC=0.4 XCJC=0.6
+ TF=1N XTF=5 VTF=6 ITF=1 TR=80NS)
`;

// Source: the published notation: scale factors T G MEG K M U N P F, letters behind them ignored,
// + continues a line, * and ; begin remarks (SPICE user's guides, from memory).
describe('a pasted model card', () => {
  test('means what the notation says', () => {
    const { name, values, leftOut, unknown, says } = readCard(written);
    expect(name).toBe('MINE');
    expect(values).toEqual({
      is: 2.5e-13,
      bf: 90,
      nf: 1.01,
      vaf: 60,
      ikf: 0.9,
      ise: 3e-12,
      ne: 1.6,
      br: 4,
      rb: 3.3,
      re: 0.05,
      rc: 0.15,
      cje: 2e-10,
      vje: 0.74,
      mje: 0.36,
      cjc: 4e-11,
      vjc: 0.55,
      mjc: 0.4,
      tf: 1e-9,
      xtf: 5,
      vtf: 6,
      itf: 1,
      tr: 8e-8,
    });
    expect(leftOut).toEqual(['XCJC']);
    expect(unknown).toEqual([]);
    expect(says).toEqual([]);
  });

  // The simulator reads the same lines by itself and finds the operating point. Its Boltzmann constant
  // is of an older set: some 1e-5 in the exponential.
  test.for([0.6, 0.75, 0.9])('is read as the simulator reads it, bias %d V', async (bias) => {
    const run = await simulateReal(
      [`vb b 0 ${bias}`, 'vc c 0 5', 'q1 c b 0 mine', written].join('\n'),
      '.op',
    );
    const desk = { rest: balanceDesk(0, 1) };
    const { card } = cardOf('d139', 190e6, written);
    const model = gummelPoonAt(card, 300.15);
    const z = Float64Array.of(
      model.rb + model.re,
      0,
      model.rb,
      0,
      model.rb,
      0,
      model.rb + model.rc,
      0,
    );
    operatingPoint(desk, model, { frequency: 0, z, e: Float64Array.of(bias, 0, bias - 5, 0) });
    const collector = -(desk.rest.current[1] ?? 0);
    const base = (desk.rest.current[0] ?? 0) + (desk.rest.current[1] ?? 0);
    expect(collector / -(run.vector('i(vc)')[0] ?? 0)).toBeCloseTo(1, 4);
    expect(base / -(run.vector('i(vb)')[0] ?? 0)).toBeCloseTo(1, 4);
  });

  test('bare parameters leave the rest as it was; a transit time of its own goes before a frequency', () => {
    const base = transistorModels.d139;
    const { card, whence } = cardOf('d139', 95e6, 'RB=2');
    expect(card.rb).toBe(2);
    expect(card.bf).toBe(base.bf);
    expect(card.tf).toBeCloseTo(2 * base.tf, 18);
    expect([whence('rb'), whence('tf'), whence('bf')]).toEqual(['own', 'fT', 'device']);
    expect(cardOf('d139', 95e6, 'TF=1n').card.tf).toBe(1e-9);
  });

  test('what makes no sense is said and left out', () => {
    const read = readCard('.model x NPN (BF=-3 RB=ten IS=1e-13 WHAT=7 BF=50 hm)\nq1 c b e x');
    expect(read.values).toEqual({ is: 1e-13, bf: 50 });
    expect(read.unknown).toEqual(['WHAT']);
    expect(read.says).toEqual([
      'Lines that belong to no card are not used.',
      'BF is too small to be meant: 1 to 5000 is taken.',
      '“RB=ten” is not a number.',
      '“hm” is not understood.',
    ]);
    expect(readCard('.model p PNP (IS=1e-14)').values).toEqual({});
    expect(readCard('VAF=0 IKF=0').values).toEqual({
      vaf: Number.POSITIVE_INFINITY,
      ikf: Number.POSITIVE_INFINITY,
    });
    for (const junk of [
      '',
      '\n\n',
      '.model',
      '====',
      '(',
      '+++',
      '.model . npn',
      'é'.repeat(4000),
    ]) {
      expect(readCard(junk).values).toEqual({});
    }
  });
});
