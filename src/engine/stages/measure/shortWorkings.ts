import type { Look, Working } from '../../fields/workings.ts';

const method = (look: Look) => look('measure.method') as string;
const direct = (look: Look) => look('measure.firstWith') === 'direct';

const lore = 'first-order formula, common practice';

/** The usual shortcuts. */
export const shortWorkings = {
  fsShort: (look: Look): Working => {
    if (method(look) === 'shift' && !direct(look)) {
      return {
        says: 'Down from the first reading by what its capacitor alone would have raised it.',
        formula: 'f_1 * (1 - C_mq / C_s1 / 2)',
        where: { f_1: 'measure.first', C_mq: 'measure.cmShort', C_s1: 'measure.firstSeries' },
        source: lore,
      };
    }
    const path =
      method(look) === 'fixture'
        ? 'measure.peak'
        : method(look) === 'shift'
          ? 'measure.first'
          : 'measure.series';
    return {
      says: 'The reading taken as it is.',
      formula: 'f_r',
      where: { f_r: path },
      source: lore,
    };
  },
  lmShort: (look: Look): Working =>
    method(look) === 'fixture'
      ? {
          says: 'All resistance in the loop over 2π times the width.',
          formula: '(2 * R_T + R_mq) / (2 * pi * W)',
          where: { R_T: 'measure.end', R_mq: 'measure.rmShort', W: 'measure.width' },
          source: 'series resonant circuit; IEC 60444-1',
          assumes: 'No capacitance across the crystal; half the power at the edges.',
        }
      : {
          says: 'The inductance that resonates with the shortcut’s Cm.',
          formula: '1 / ((2 * pi * f_sq)^2 * C_mq)',
          where: { f_sq: 'measure.fsShort', C_mq: 'measure.cmShort' },
          source: lore,
        },
  cmShort: (look: Look): Working => {
    if (method(look) === 'fixture') {
      return {
        says: 'The capacitance that resonates with the shortcut’s Lm.',
        formula: '1 / ((2 * pi * f_sq)^2 * L_mq)',
        where: { f_sq: 'measure.fsShort', L_mq: 'measure.lmShort' },
        source: lore,
      };
    }
    if (method(look) === 'pair') {
      return {
        says: 'Twice C0 times the relative distance of the resonances.',
        formula: '2 * C_0 * (f_b - f_a) / f_a',
        where: { C_0: 'measure.c0', f_a: 'measure.series', f_b: 'measure.parallel' },
        source: lore,
        assumes: 'Nothing but the holder across the crystal.',
      };
    }
    const first = direct(look) ? '(1 / C_s2)' : '(1 / C_s2 - 1 / C_s1)';
    return {
      says: 'Twice the series capacitor times the relative shift.',
      formula: `2 * (f_2 - f_1) / f_1 / ${first}`,
      where: {
        f_1: 'measure.first',
        f_2: 'measure.second',
        C_s2: 'measure.secondSeries',
        ...(direct(look) ? {} : { C_s1: 'measure.firstSeries' }),
      },
      source: lore,
      assumes: 'An oscillator of endless capacitance, and a crystal without a holder.',
    };
  },
  rmShort: {
    says: 'What must lie in series with both ends to lose so much.',
    formula: '2 * R_T * (10^(a / 20) - 1)',
    where: { R_T: 'measure.end', a: 'measure.peakLoss' },
    source: 'IEC 60444-1',
    assumes: 'No capacitance across the crystal.',
  },
  fsOff: {
    says: 'Shortcut less exact.',
    formula: 'f_sq - f_s',
    where: { f_sq: 'measure.fsShort', f_s: 'measure.fs' },
    source: 'definition',
  },
  lmOff: off('lm', 'L'),
  cmOff: off('cm', 'C'),
  rmOff: off('rm', 'R'),
} as const;

function off(key: string, letter: string): Working {
  return {
    says: 'Shortcut less exact, over the exact.',
    formula: `(${letter}_mq - ${letter}_m) / ${letter}_m`,
    where: { [`${letter}_mq`]: `measure.${key}Short`, [`${letter}_m`]: `measure.${key}` },
    source: 'definition',
  };
}
