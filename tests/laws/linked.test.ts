import { describe, expect, test } from 'vitest';
import { emptyRig, type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { moved } from '../../src/engine/rig/moved.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';

const evaluate = createEvaluator(stages);

describe('one rig, one graph', () => {
  test('a change of the bandwidth moves everything that hangs on it, at once', () => {
    const rig = examples[0] ?? emptyRig();
    const before = evaluate(rig);
    const after = evaluate(withEntry(rig, 'filter.bandwidth', '2000'));
    const paths = moved(before, after).map((move) => move.path);
    for (const path of [
      'filter.couplings',
      'filter.ends',
      'filter.loss',
      'carrier.frequency',
      'carrier.seriesC',
      'carrier.suppression300',
      'carrier.audioHigh6',
      'transmit.chain',
      'transmit.micGain',
      'receive.floor',
      'receive.bandNoise',
      'path.snr',
      'bench.frequencies',
    ]) {
      expect(paths, path).toContain(path);
    }
  });

  // Common practice, no source: a direct 40 m rig with a passband of about 7.157–7.160 MHz and
  // the carrier at its top sends the lower sideband.
  test('a passband of 7.157 to 7.160 MHz with the carrier at its top gives the lower sideband', () => {
    let rig: Rig = emptyRig();
    for (const [path, text] of [
      ['plan.marking', '7M16'],
      ['plan.sideband', 'lower'],
      ['quartz.fsGiven', '7.1568M'],
      ['quartz.lmGiven', '30m'],
      ['quartz.c0Given', '4p'],
      ['quartz.quGiven', '70k'],
      ['filter.crystals', '6'],
      ['filter.bandwidth', '2600'],
    ] as const) {
      rig = withEntry(rig, path, text);
    }
    const worked = evaluate(rig);
    const at = (path: string) => Number(valueAt(worked, path));
    expect(at('filter.low3')).toBeGreaterThan(7.1565e6);
    expect(at('filter.high3')).toBeLessThan(7.1605e6);
    expect(at('carrier.frequency')).toBeGreaterThan(at('filter.high6'));
    expect(valueAt(worked, 'carrier.sideband')).toBe('lower');
  });
});
