import { turnsRatio } from '../../circuit/turnsRatio.ts';
import type { Bound, Look, Working } from '../../fields/workings.ts';
import { seenBy } from './seen.ts';
import { loadSide, NO_REACTANCE, type Side, sourceSide } from './sides.ts';
import { MATCHED_TO, wayKeys } from './wayRows.ts';
import type { WayKey } from './waySteps.ts';

type SideKey = 'source' | 'load';

const book = 'closed form; any text on impedance matching';

const sideOf = (look: Look, key: SideKey): Side | null =>
  (key === 'source' ? sourceSide : loadSide)(seenBy(look));

/** Resistance and capacitance in parallel that the amplifier at an end has. */
const amplifierAt = (key: SideKey) =>
  key === 'source'
    ? { r: 'transmit.amplifierOutput', c: 'transmit.amplifierOutputC' }
    : { r: 'transmit.amplifierInput', c: 'transmit.amplifierInputC' };

/** What stands at an end, as it is. */
const stands = (key: SideKey): Record<string, Bound> => ({
  R_0: `ends.${key}Gives`,
  X_0: `ends.${key}GivesX`,
});

const leftByCoil: Bound = {
  formula: '(R_0^2 + X_0^2) / R_0',
  unit: 'Ω',
  says: 'what is left of it with the coil across',
};

/** The amplifier's resistance with its capacitance across it, in series form. */
const inSeriesForm = (key: SideKey, formula: string): Working => ({
  says: 'The amplifier’s resistance with its capacitance across it, as resistance and reactance in series.',
  formula,
  where: {
    R_p: amplifierAt(key).r,
    C_p: amplifierAt(key).c,
    f_c: 'filter.centre',
    q: { formula: '2 * pi * f_c * R_p * C_p', unit: '1', says: 'resistance over reactance' },
  },
  source: 'closed form',
});

/** What is matched to what: R_a on the device's side, R_w on the filter's. */
function matched(look: Look, key: SideKey): Record<string, Bound> {
  const typed = look(`ends.${key}Wound`);
  return {
    ...stands(key),
    R_a:
      typeof typed === 'number'
        ? `ends.${key}Wound`
        : look(`ends.${key}Coil`) !== null
          ? leftByCoil
          : look(`ends.${key}Is`) === 'amplifier'
            ? amplifierAt(key).r
            : `ends.${key}Gives`,
    R_w: key === 'source' ? 'filter.ends' : 'filter.endsLoad',
    f_c: 'filter.centre',
  };
}

/** The parts as steps, in symbols: those of `matched` are enough. */
function partSteps(side: Side, way: WayKey): Record<string, Bound> {
  const step = (formula: string, unit: 'Ω' | '1', says: string): Bound => ({ formula, unit, says });
  const up = side.wants > side.wound;
  const [high, low] = up ? ['R_w', 'R_a'] : ['R_a', 'R_w'];
  if (side.wants === side.wound || way === 'straight') return {};
  if (way === 'transformer') {
    const { primary, secondary } = turnsRatio(side.wants / side.wound, false);
    return {
      N_a: { value: primary ?? 1, unit: 'turns', says: 'turns on the amplifier’s side' },
      N_w: { value: secondary ?? 1, unit: 'turns', says: 'turns on the filter’s side' },
    };
  }
  if (way === 'resistor') {
    return up
      ? { R_1: step('R_w - R_a', 'Ω', 'in series') }
      : { R_2: step('R_w * R_a / (R_a - R_w)', 'Ω', 'across') };
  }
  if (way === 'pad') {
    return {
      R_1: step(`sqrt(${high} * (${high} - ${low}))`, 'Ω', 'in series with the higher side'),
      R_2: step(`${low} * sqrt(${high} / (${high} - ${low}))`, 'Ω', 'across the lower side'),
    };
  }
  return {
    Q: step(`sqrt((${high} - ${low}) / ${low})`, '1', 'of the L network'),
    X_1: step(`Q * ${low}`, 'Ω', 'in series with the lower side'),
    X_2: step(`${high} / Q`, 'Ω', 'across the higher side'),
  };
}

/** The impedance that the filter sees as one formula, in ohms, and the shares of power on the way. */
function seenFormula(side: Side, way: WayKey): { z: string; shares: string[] } {
  let z = '(R_g / R_u + i * X_g / R_u)';
  const shares: string[] = [];
  const inSeries = (r: string | null, x: string | null) => {
    if (r !== null) shares.push(`re(${z}) / (re(${z}) + ${r} / R_u)`);
    z = `(${z} + ${[r, x === null ? null : `i * ${x}`].filter((t) => t !== null).join(' + ')} / R_u)`;
  };
  const across = (r: string | null, x: string | null) => {
    if (r !== null) shares.push(`re(1 / ${z}) / (re(1 / ${z}) + R_u / ${r})`);
    z = `(1 / (1 / ${z} + ${r !== null ? `R_u / ${r}` : `R_u / (i * ${x})`}))`;
  };
  const up = side.wants > side.wound;
  if (way === 'straight' || side.wants === side.wound) return { z, shares };
  if (way === 'transformer') return { z: `(${z} * (N_w / N_a)^2)`, shares };
  if (way === 'resistor') {
    if (up) inSeries('R_1', null);
    else across('R_2', null);
    return { z, shares };
  }
  // A coil in series and a capacitor across; the other way round in the high-pass form.
  const sign = way === 'lowpass' ? ['X_1', '(-X_2)'] : ['(-X_1)', 'X_2'];
  const [x1 = null, x2 = null] = way === 'pad' ? [] : sign;
  const [r1, r2] = way === 'pad' ? ['R_1', 'R_2'] : [null, null];
  const seriesFirst = way === 'pad' ? !up : up;
  const steps = [() => inSeries(r1, x1), () => across(r2, x2)];
  for (const step of seriesFirst ? steps : steps.reverse()) step();
  return { z, shares };
}

const nearlyNone: Bound = {
  value: NO_REACTANCE,
  unit: '1',
  says: 'share of the resistance under which it is none',
};

const one: Bound = { value: 1, unit: 'Ω', says: 'one ohm, which makes plain numbers' };

function seenWhere(look: Look, key: SideKey, side: Side, way: WayKey): Record<string, Bound> {
  const parts = partSteps(side, way);
  const needs = Object.keys(parts).length > 0;
  return {
    R_u: one,
    ...(look(`ends.${key}Coil`) === null
      ? { R_g: `ends.${key}Gives`, X_g: `ends.${key}GivesX` }
      : {
          ...stands(key),
          R_g: leftByCoil,
          X_g: { formula: '0 * X_0', unit: 'Ω', says: 'tuned out' },
        }),
    ...(needs ? matched(look, key) : {}),
    ...parts,
  };
}

/** Resistance, reactance or loss through a way of matching. */
function through(look: Look, key: SideKey, way: WayKey, what: 're' | 'im' | 'loss'): Working {
  const side = sideOf(look, key);
  if (side === null) throw new RangeError('nothing stands there');
  const { z, shares } = seenFormula(side, way);
  const where = seenWhere(look, key, side, way);
  if (what === 'loss') {
    return {
      says:
        shares.length === 0
          ? 'Nothing in it takes power.'
          : 'The share of the power that each resistor lets pass.',
      formula: shares.length === 0 ? '0 * R_g / R_u' : `-10 * log10(${shares.join(' * ')})`,
      where,
      source: book,
    };
  }
  return {
    says: 'What stands there, seen through one part after the other.',
    formula:
      what === 're' ? `R_u * re(${z})` : `R_u * (abs(im(${z})) < none * re(${z}) ? 0 : im(${z}))`,
    where: what === 're' ? where : { ...where, none: nearlyNone },
    source: book,
  };
}

/** Parts of the L network. */
function lPart(look: Look, key: SideKey, index: number, part: 'l' | 'c'): Working {
  const side = sideOf(look, key);
  const way = wayKeys[index] ?? 'straight';
  if (side === null) throw new RangeError('nothing stands there');
  const series = (way === 'lowpass') === (part === 'l');
  const x = series ? 'X_1' : 'X_2';
  return {
    says: series ? 'In series with the lower side.' : 'Across the higher side.',
    formula: part === 'l' ? `${x} / (2 * pi * f_c)` : `1 / (2 * pi * f_c * ${x})`,
    where: { ...matched(look, key), ...partSteps(side, way) },
    source: book,
  };
}

/** Workings of the rows of one side, and of what was chosen there. */
export function sideWorkings<K extends SideKey>(key: K) {
  const wayAt = (index: number) => wayKeys[index] ?? 'straight';
  const parts = (look: Look, index: number, formula: string, says: string): Working => {
    const side = sideOf(look, key);
    return {
      says,
      formula,
      where: { ...matched(look, key), ...(side ? partSteps(side, wayAt(index)) : {}) },
      source: book,
    };
  };
  const chosen = (what: 're' | 'im' | 'loss') => (look: Look) =>
    through(look, key, look(`ends.${key}By`) as WayKey, what);
  const row = (what: 're' | 'im' | 'loss') => (look: Look, index: number) =>
    through(look, key, wayAt(index), what);
  return {
    gives: (look: Look): Working => {
      const is = look(`ends.${key}Is`) as string;
      if (is === 'fifty') {
        return {
          says: 'What most test gear has.',
          formula: 'R_n',
          where: { R_n: { value: 50, unit: 'Ω', says: 'nominal' } },
          source: 'common practice, no source',
        };
      }
      if (is === 'amplifier') return inSeriesForm(key, 'R_p / (1 + q^2)');
      return {
        says: 'As given.',
        formula: 'R_n',
        where: { R_n: `ends.${key}Own` },
        source: 'as typed',
      };
    },
    givesX: (look: Look): Working => {
      const is = look(`ends.${key}Is`) as string;
      if (is === 'amplifier') return inSeriesForm(key, '-q * R_p / (1 + q^2)');
      if (is === 'own') {
        return {
          says: 'As given.',
          formula: 'X_n',
          where: { X_n: `ends.${key}OwnX` },
          source: 'as typed, or none',
        };
      }
      return {
        says: 'Test gear is a resistance.',
        formula: '0 * R_n',
        where: { R_n: `ends.${key}Gives` },
        source: 'definition',
      };
    },
    coil: {
      says: 'It resonates with the capacitance in parallel.',
      formula: '-(R_0^2 + X_0^2) / (2 * pi * f_c * X_0)',
      where: { ...stands(key), f_c: 'filter.centre' },
      source: 'closed form',
    },
    seen: chosen('re'),
    seenX: chosen('im'),
    lossOf: chosen('loss'),
    way: {
      says: 'All ways, one after the other.',
      rule: 'In a fixed order.',
      where: {},
      source: 'definition',
    },
    turns: {
      says: 'Turns go as the root of the resistances.',
      rule: 'The smallest whole numbers whose ratio is within 4 % of the exact one.',
      where: {},
      source: 'ideal transformer',
    },
    l: (look: Look, index: number) => lPart(look, key, index, 'l'),
    c: (look: Look, index: number) => lPart(look, key, index, 'c'),
    series: (look: Look, index: number) => parts(look, index, 'R_1', 'What is in line.'),
    shunt: (look: Look, index: number) => parts(look, index, 'R_2', 'What is to ground.'),
    q: (look: Look, index: number) =>
      parts(look, index, 'Q', 'Reactance over resistance in the series arm.'),
    band: (look: Look, index: number): Working => {
      const working = parts(
        look,
        index,
        '2 * f_c / Q * sqrt(10^(A_b / 10) - 1)',
        'Loaded, the network has half of its Q.',
      );
      return {
        ...working,
        where: {
          ...working.where,
          A_b: { value: MATCHED_TO, unit: 'dB', says: 'allowed at the ends of the band' },
        },
        source: 'single resonant circuit, first order',
        assumes: 'A Q of 3 or more; with less the network is wider than this.',
      };
    },
    loss: row('loss'),
    seenR: row('re'),
    seenXRow: row('im'),
    advice: {
      says: 'By the ratio of what is there to what is wanted.',
      rule: 'Up to a tenth: straight. Up to 1.6: a resistor. Up to 25: a transformer. Beyond: an L match.',
      where: {},
      source: 'common practice, no source',
    },
  } as const;
}
