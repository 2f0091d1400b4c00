import { describe, expect, test } from 'vitest';
import { emptyRig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { workConvert } from '../../src/engine/stages/convert/work.ts';

const base = {
  scheme: 'conversion',
  sideband: 'lower',
  oscillatorGiven: null,
  span: 0,
  oscillatorLevel: 7,
  signalLevel: -10,
  mixerLoss: 6.5,
  oscillatorIsolation: 35,
  signalIsolation: 30,
} as const;

describe('which sideband comes out', () => {
  // Truth table of mixing: sum and IF − LO keep the sideband, LO − IF turns it round. The printed
  // legend has 9 MHz and 5 MHz flip between 4 and 14 MHz; a 9 MHz filter doesn't, a 5 MHz one does.
  test.each([
    ['9 MHz filter, 5 MHz oscillator, 14 MHz', 9e6, 14e6, 'difference', 5e6, 'lower'],
    ['9 MHz filter, 5 MHz oscillator, 4 MHz', 9e6, 4e6, 'difference', 5e6, 'lower'],
    ['5 MHz filter, 9 MHz oscillator, 14 MHz', 5e6, 14e6, 'difference', 9e6, 'lower'],
    ['5 MHz filter, 9 MHz oscillator, 4 MHz', 5e6, 4e6, 'sum', 9e6, 'upper'],
    ['12 MHz filter, 19.1 MHz oscillator, 7.1 MHz', 12e6, 7.1e6, 'sum', 19.1e6, 'upper'],
    ['12 MHz filter, 4.9 MHz oscillator, 7.1 MHz', 12e6, 7.1e6, 'difference', 4.9e6, 'lower'],
  ] as const)('%s', (_, carrier, nominal, side, oscillator, out) => {
    const { results, problems } = workConvert({
      ...base,
      side,
      nominal,
      filterFrequency: carrier,
      carrier,
      made: 'lower',
    });
    expect(results.oscillator).toBeCloseTo(oscillator, 3);
    expect(results.lands).toBeCloseTo(nominal, 3);
    expect(results.comesOut).toBe(out);
    expect(results.tones?.map(({ side }) => side)).toEqual([out, out, out]);
    expect(results.tones?.map(({ beside }) => Math.round(beside ?? 0))).toEqual(
      [300, 1000, 2700].map((tone) => (out === 'lower' ? -tone : tone)),
    );
    expect(problems.length).toBe(out === 'lower' ? 0 : 1);
  });

  test('images lie twice the intermediate frequency away, or on the other side of zero', () => {
    const at = (side: 'difference' | 'sum', carrier: number, nominal: number) =>
      workConvert({ ...base, side, nominal, filterFrequency: carrier, carrier, made: 'lower' })
        .results;
    // 7.1 = 4.9… from 12: the image is 4.9 + 12; with 19.1 it is 19.1 + 12. 14 = 5 + 9: 9 − 5.
    expect(at('difference', 12e6, 7.1e6).image).toBeCloseTo(16.9e6, 3);
    expect(at('sum', 12e6, 7.1e6).image).toBeCloseTo(31.1e6, 3);
    expect(at('difference', 9e6, 14e6).image).toBeCloseTo(4e6, 3);
  });

  test('an oscillator of one’s own lands where the sum says', () => {
    const { results, problems } = workConvert({
      ...base,
      side: 'difference',
      nominal: 7.1e6,
      filterFrequency: 12e6,
      carrier: 12.001e6,
      made: 'lower',
      oscillatorGiven: 4.9152e6,
    });
    expect(results.lands).toBeCloseTo(7.0858e6, 3);
    expect(problems[0]?.field).toBe('convert.oscillatorGiven');
  });
});

test('a rig of 12 MHz crystals for the lower sideband on 40 m puts its carrier on the right side', () => {
  const texts = {
    'plan.scheme': 'conversion',
    'plan.frequency': '7.1M',
    'plan.marking': '12M',
    'quartz.fsGiven': '12M',
    'quartz.lmGiven': '9m',
    'quartz.c0Given': '4p',
    'quartz.quGiven': '80k',
    'filter.bandwidth': '2400',
  };
  const evaluate = createEvaluator(stages);
  for (const [side, above, out] of [
    ['difference', 1, 'lower'],
    ['sum', -1, 'lower'],
  ] as const) {
    let rig = emptyRig();
    for (const [path, text] of Object.entries({ ...texts, 'plan.side': side })) {
      rig = withEntry(rig, path, text);
    }
    const worked = evaluate(rig);
    const carrier = valueAt(worked, 'carrier.frequency') as number;
    const middle = valueAt(worked, 'filter.centre') as number;
    expect(Math.sign(carrier - middle)).toBe(above);
    expect(valueAt(worked, 'convert.comesOut')).toBe(out);
    expect(valueAt(worked, 'convert.lands')).toBeCloseTo(7.1e6, 3);
  }
});
