import type { Ladder } from '../../circuit/ladder.ts';
import { between } from '../../circuit/ladder.ts';
import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import { LEVEL_STEP } from '../../circuit/passband.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { passbandBetween } from './between.ts';
import type { endsFields } from './fields.ts';
import { seenBy } from './seen.ts';
import { sideWorkings } from './sideWorkings.ts';
import { LITTLE, MUCH } from './work.ts';

type Place = 'right' | 'real';

const chain = 'closed form: chain matrices of the ladder';
const value = (look: Look, key: string) => look(`ends.${key}`) as number;

/** The ladder between right or real ends. */
function placed(look: Look, place: Place): Ladder {
  const { ladder, ends, endsLoad } = seenBy(look);
  return place === 'right'
    ? between(ladder, [ends, 0], [endsLoad, 0])
    : between(
        ladder,
        [value(look, 'sourceSeen'), value(look, 'sourceSeenX')],
        [value(look, 'loadSeen'), value(look, 'loadSeenX')],
      );
}

const between3 = { value: 3, unit: 'dB', says: 'so far down' } as const;

/** An edge of the passband, as the root of its equation. */
const edge =
  (place: Place, key: 'Low' | 'High') =>
  (look: Look): Working => {
    const { formulas, where } = ladderFormulas(placed(look, place), ['f_e']);
    return {
      says: 'Outermost frequency at which the response is 3 dB below its best point.',
      left: `-(${formulas[0]}) - A_best`,
      right: 'A_down',
      root: 'f_e',
      where: {
        f_e: `ends.${place}${key}`,
        A_best: `ends.${place}Loss`,
        A_down: between3,
        ...where,
      },
      source: chain,
    };
  };

const width = (place: Place): Working => ({
  says: 'From the lower to the upper −3 dB point.',
  formula: 'f_hi - f_lo',
  where: { f_hi: `ends.${place}High`, f_lo: `ends.${place}Low` },
  source: 'definition',
});

const loss =
  (place: Place) =>
  (look: Look): Working => {
    const { formulas, where } = ladderFormulas(placed(look, place), ['f_b']);
    return {
      says: 'The gain at the best point, with the sign of a loss.',
      formula: `-(${formulas[0]})`,
      where: { f_b: `ends.${place}Peak`, ...where },
      source: chain,
    };
  };

const peak =
  (place: Place) =>
  (look: Look): Working => {
    const { formulas, where } = ladderFormulas(placed(look, place), ['f_below', 'f_above']);
    const step = (formula: string, says: string): Bound => ({ formula, unit: 'Hz', says });
    return {
      says: 'The top of the highest hump: as much is passed one hertz below as one hertz above.',
      left: `10^((${formulas[0]}) / 10)`,
      right: `10^((${formulas[1]}) / 10)`,
      root: 'f_b',
      where: {
        f_b: `ends.${place}Peak`,
        d_f: { value: LEVEL_STEP, unit: 'Hz', says: 'to either side' },
        f_below: step('f_b - d_f', 'one hertz below'),
        f_above: step('f_b + d_f', 'one hertz above'),
        ...where,
      },
      source: chain,
    };
  };

const ripple =
  (place: Place) =>
  (look: Look): Working => {
    const ladder = placed(look, place);
    const { low3, high3 } = seenBy(look);
    const { dip } = passbandBetween(ladder, ladder.source, ladder.load, low3, high3);
    if (dip.at === null) {
      return {
        says: 'The passband is one hump: there is no dip.',
        formula: '0 * A_best',
        where: { A_best: `ends.${place}Loss` },
        source: 'definition',
      };
    }
    const { formulas, where } = ladderFormulas(ladder, ['f_dip']);
    return {
      says: 'The deepest dip between two humps, against the best point.',
      formula: `-(${formulas[0]}) - A_best`,
      where: {
        f_dip: { value: dip.at, unit: 'Hz', says: 'where the deepest dip is' },
        A_best: `ends.${place}Loss`,
        ...where,
      },
      source: chain,
    };
  };

const gain =
  (place: Place) =>
  (look: Look): Working => {
    const { formulas, where } = ladderFormulas(placed(look, place), ['f']);
    return {
      says: 'Power in the load over the most that the source could give, part after part.',
      formula: formulas[0] ?? '',
      where: { f: 'point.frequency', ...where },
      source: chain,
    };
  };

const source = sideWorkings('source');
const load = sideWorkings('load');

export const endsWorkings: StageWorkings<typeof endsFields> = {
  rightRipple: ripple('right'),
  rightLoss: loss('right'),
  rightWidth: width('right'),
  rightPeak: peak('right'),
  rightLow: edge('right', 'Low'),
  rightHigh: edge('right', 'High'),
  realRipple: ripple('real'),
  realLoss: loss('real'),
  realWidth: width('real'),
  realPeak: peak('real'),
  realLow: edge('real', 'Low'),
  realHigh: edge('real', 'High'),
  'rightResponse.gain': gain('right'),
  'realResponse.gain': gain('real'),
  wholeLoss: {
    says: 'Filter and mismatch, and what the resistors of the matching take.',
    formula: 'A_a + A_sm + A_lm',
    where: { A_a: 'ends.realLoss', A_sm: 'ends.sourceLoss', A_lm: 'ends.loadLoss' },
    source: 'levels add up',
  },
  rippleCost: {
    says: 'Real less right ends.',
    formula: 'A_rip_a - A_rip_r',
    where: { A_rip_a: 'ends.realRipple', A_rip_r: 'ends.rightRipple' },
    source: 'definition',
  },
  lossCost: {
    says: 'With the matching and real ends, less with right ends.',
    formula: 'A_w - A_r',
    where: { A_w: 'ends.wholeLoss', A_r: 'ends.rightLoss' },
    source: 'definition',
  },
  verdict: {
    says: 'By the ripple that the ends add.',
    formula: 'd_rip < d_1 ? "holds" : (d_rip < d_2 ? "close" : "fails")',
    where: {
      d_rip: 'ends.rippleCost',
      d_1: { value: LITTLE, unit: 'dB', says: 'not worth a soldering iron' },
      d_2: { value: MUCH, unit: 'dB', says: 'heard' },
    },
    source: 'common practice, no source',
  },
  sourceGives: source.gives,
  sourceGivesX: source.givesX,
  sourceCoil: source.coil,
  sourceSeen: source.seen,
  sourceSeenX: source.seenX,
  sourceLoss: source.lossOf,
  sourceAdvice: source.advice,
  'sourceWays.way': source.way,
  'sourceWays.turns': source.turns,
  'sourceWays.l': source.l,
  'sourceWays.c': source.c,
  'sourceWays.series': source.series,
  'sourceWays.shunt': source.shunt,
  'sourceWays.q': source.q,
  'sourceWays.band': source.band,
  'sourceWays.loss': source.loss,
  'sourceWays.seen': source.seenR,
  'sourceWays.seenX': source.seenXRow,
  loadGives: load.gives,
  loadGivesX: load.givesX,
  loadCoil: load.coil,
  loadSeen: load.seen,
  loadSeenX: load.seenX,
  loadLoss: load.lossOf,
  loadAdvice: load.advice,
  'loadWays.way': load.way,
  'loadWays.turns': load.turns,
  'loadWays.l': load.l,
  'loadWays.c': load.c,
  'loadWays.series': load.series,
  'loadWays.shunt': load.shunt,
  'loadWays.q': load.q,
  'loadWays.band': load.band,
  'loadWays.loss': load.loss,
  'loadWays.seen': load.seenR,
  'loadWays.seenX': load.seenXRow,
  trickSource: {
    says: 'With the generator’s own resistance it makes what the filter’s input wants.',
    formula: 'R_w - R_p',
    where: { R_w: 'filter.ends', R_p: 'ends.port' },
    source: 'resistances in series',
  },
  trickLoad: {
    says: 'With the receiver’s own resistance it makes what the filter’s output wants.',
    formula: 'R_w - R_p',
    where: { R_w: 'filter.endsLoad', R_p: 'ends.port' },
    source: 'resistances in series',
  },
  trickRange: {
    says: 'At each end only the share R_p/R of the power passes.',
    formula: '10 * log10(R_w1 / R_p * R_w2 / R_p)',
    where: { R_w1: 'filter.ends', R_w2: 'filter.endsLoad', R_p: 'ends.port' },
    source: 'resistances in series',
  },
  trickReading: {
    says: 'The filter’s own loss and that of the resistors, under a straight connection.',
    formula: '-(A_r + A_t)',
    where: { A_r: 'ends.rightLoss', A_t: 'ends.trickRange' },
    source: 'levels add up',
  },
  trickDepth: {
    says: 'What is left of the analyser’s range under the best point.',
    formula: 'D_a - A_r - A_t',
    where: { D_a: 'ends.range', A_r: 'ends.rightLoss', A_t: 'ends.trickRange' },
    source: 'levels add up',
  },
};
