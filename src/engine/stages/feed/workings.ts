import { type FeedLineKey, feedLines } from '../../data/feedLines.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { antennaResistance, swrHolds } from './antennaResistance.ts';
import type { feedFields } from './fields.ts';

const book = 'ARRL Antenna Book, chapter on transmission lines (from memory)';
const TOTAL = '10 * log10((a^2 - rho^2) / (a * (1 - rho^2)))';

const lineOf = (key: unknown) => feedLines[key as FeedLineKey] ?? feedLines.rg58;

const resistanceOf = (look: Look): boolean =>
  antennaResistance({
    kind: look('antenna.kind') as 'dipole',
    radiation: look('antenna.radiation') as number | null,
    losses: look('antenna.losses') as number | null,
  }) !== null;

/** SWR at the antenna: as typed, by the resistances, or 1. */
function swrWorking(look: Look, typed: string | null, key: unknown, known: boolean): Working {
  if (typed !== null && typeof look(typed) === 'number') {
    return { says: 'As typed.', formula: 'S_a', where: { S_a: typed }, source: 'as typed' };
  }
  if (!known) {
    return {
      says: 'The antenna’s resistance is not known here, or a transformer makes it the line’s: taken as matched.',
      formula: 'S_1',
      where: { S_1: { value: 1, unit: '1', says: 'matched' } },
      source: 'definition',
    };
  }
  const lost = typeof look('antenna.losses') === 'number';
  return {
    says: 'The antenna’s resistance over the line’s, whichever way round is more than one.',
    formula: 'max(R_a / Z_0, Z_0 / R_a)',
    where: {
      R_rad: 'antenna.radiation',
      ...(lost ? { R_loss: 'antenna.losses' } : {}),
      R_a: {
        formula: lost ? 'R_rad + R_loss' : 'R_rad',
        unit: 'Ω',
        says: 'resistance of the antenna in tune',
      },
      Z_0: { value: lineOf(key).impedance, unit: 'Ω', says: 'impedance of the line' },
    },
    source: 'definition',
    assumes: 'The antenna is in tune.',
  };
}

/** Matched loss of a length of line. */
function matchedWorking(key: unknown, length: string): Working {
  const { name, steadyLoss, rootLoss, linearLoss, source } = lineOf(key);
  const thin = steadyLoss > 0;
  return {
    says: 'The conductors’ skin takes by the root of the frequency, the insulation by the frequency.',
    formula: `l / l_1 * (${thin ? 'k_0 + ' : ''}k_1 * sqrt(f_0 / f_M) + k_2 * f_0 / f_M)`,
    where: {
      l: length,
      l_1: { value: 100, unit: 'm', says: 'length that the table is for' },
      ...(thin
        ? {
            k_0: { value: steadyLoss, unit: 'dB', says: 'its thin core, at any frequency', source },
          }
        : {}),
      k_1: { value: rootLoss, unit: 'dB', says: `conductors, at 1 MHz: ${name}`, source },
      k_2: { value: linearLoss, unit: 'dB', says: `insulation, at 1 MHz: ${name}`, source },
      f_0: 'plan.nominal',
      f_M: { value: 1e6, unit: 'Hz', says: 'one megahertz' },
    },
    source,
  };
}

/** What the standing wave makes of it. */
function waveWorking(swr: string, matched: string, formula: string, says: string): Working {
  const where: Record<string, Bound> = {
    S: swr,
    A_0: matched,
    a: { formula: '10^(A_0 / 10)', unit: '1', says: 'matched loss as a ratio' },
    rho: { formula: '(S - 1) / (S + 1)', unit: '1', says: 'share of the voltage thrown back' },
  };
  return {
    says,
    formula,
    where,
    source: book,
    assumes: 'A line of real impedance, longer than about a quarter wave.',
  };
}

const typedLoss = (path: string): Working => ({
  says: 'As typed.',
  formula: 'A_typed',
  where: { A_typed: path },
  source: 'as typed',
});

const both = 'What is thrown back goes down the line again and is lost again.';

export const feedWorkings: StageWorkings<typeof feedFields> = {
  swrUsed: (look) => swrWorking(look, 'feed.swr', look('feed.line'), resistanceOf(look)),
  matched: (look) => matchedWorking(look('feed.line'), 'feed.length'),
  added: {
    says: 'All of the loss less what a matched line would lose.',
    formula: 'A_l - A_0',
    where: { A_l: 'feed.loss', A_0: 'feed.matched' },
    source: 'definition',
  },
  loss: (look) =>
    look('feed.line') === 'known'
      ? typedLoss('feed.knownLoss')
      : waveWorking('feed.swrUsed', 'feed.matched', TOTAL, both),
  swrRig: waveWorking(
    'feed.swrUsed',
    'feed.matched',
    '(a + rho) / (a - rho)',
    'What comes back has been weakened twice: in power by a each way, so in voltage by a in all.',
  ),
  farSwrUsed: (look) =>
    swrWorking(
      look,
      'feed.farSwr',
      look('feed.farLine'),
      look('antenna.far') === 'same' && resistanceOf(look),
    ),
  farMatched: (look) => matchedWorking(look('feed.farLine'), 'feed.farLength'),
  farLoss: (look) =>
    look('feed.farLine') === 'known'
      ? typedLoss('feed.farKnownLoss')
      : waveWorking('feed.farSwrUsed', 'feed.farMatched', TOTAL, both),
  'kinds.line': {
    says: 'The lines of the table.',
    rule: 'Every kind that there are figures for.',
    where: {},
    source: 'makers’ data sheets and handbook tables (from memory)',
  },
  'kinds.swr': (look) => {
    const other = look('row.line') as FeedLineKey;
    const typed = swrHolds(look('feed.line') as FeedLineKey | 'known', other);
    return swrWorking(look, typed ? 'feed.swr' : null, other, resistanceOf(look));
  },
  'kinds.matched': (look) => matchedWorking(look('row.line'), 'feed.length'),
  'kinds.total': waveWorking('row.swr', 'row.matched', TOTAL, both),
  'kinds.share': {
    says: 'The loss as a share of the power.',
    formula: '10^(-A_t / 10)',
    where: { A_t: 'row.total' },
    source: 'definition',
  },
};
