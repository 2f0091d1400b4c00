import { type Way, wayOf } from '../../circuit/mixing.ts';
import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { convertFields } from './fields.ts';

const arithmetic = 'arithmetic of a mixer: sum and difference';

const way = (look: Look): Way =>
  wayOf(
    look('plan.side') as 'difference' | 'sum',
    look('plan.nominal') as number,
    look('plan.filterFrequency') as number,
  );

/** A frequency through the mixer, as a formula. */
const through: Readonly<Record<Way, (signal: string) => string>> = {
  adds: (signal) => `f_lo + ${signal}`,
  takes: (signal) => `${signal} - f_lo`,
  turns: (signal) => `f_lo - ${signal}`,
};

const backwards: Readonly<Record<Way, string>> = {
  adds: 'f_0 - f_c',
  takes: 'f_c - f_0',
  turns: 'f_0 + f_c',
};

/** A formula by the way that the mixer is used. */
const byWay =
  (says: string, formulas: Readonly<Record<Way, string>>, where: Working['where']) =>
  (look: Look): Working => ({ says, formula: formulas[way(look)], where, source: arithmetic });

const oscillatorAndCarrier = { f_lo: 'convert.oscillator', f_c: 'carrier.frequency' } as const;

export const convertWorkings: StageWorkings<typeof convertFields> = {
  oscillator: (look) =>
    look('convert.oscillatorGiven') === null
      ? {
          says: 'What the carrier lacks to the operating frequency, or both together.',
          formula: backwards[way(look)],
          where: { f_0: 'plan.nominal', f_c: 'carrier.frequency' },
          source: arithmetic,
        }
      : {
          says: 'The oscillator that is there.',
          formula: 'f_own',
          where: { f_own: 'convert.oscillatorGiven' },
          source: 'as typed',
        },
  oscillatorTop: byWay(
    'The oscillator moves with the operating frequency; where it is subtracted from the filter’s, the other way.',
    { adds: 'f_lo + f_span', takes: 'f_lo - f_span', turns: 'f_lo + f_span' },
    { f_lo: 'convert.oscillator', f_span: 'convert.span' },
  ),
  lands: byWay(
    'The carrier through the mixer.',
    { adds: through.adds('f_c'), takes: through.takes('f_c'), turns: through.turns('f_c') },
    oscillatorAndCarrier,
  ),
  off: {
    says: 'What comes out less what was planned.',
    formula: 'f_tx - f_0',
    where: { f_tx: 'convert.lands', f_0: 'plan.nominal' },
    source: 'definition',
  },
  sum: {
    says: 'Which of sum and difference lies on the band.',
    rule: 'The sum of both frequencies as oscillator: oscillator less filter. Their difference: added to the filter below the band, taken from the filter above it.',
    where: { side: 'plan.side', f_0: 'plan.nominal', f_F: 'plan.filterFrequency' },
    source: arithmetic,
  },
  comesOut: {
    says: 'The side on which the 1 kHz tone comes out.',
    rule: 'As in the line of the 1 kHz tone.',
    where: { made: 'carrier.sideband', f_lo: 'convert.oscillator' },
    source: arithmetic,
  },
  'tones.tone': (_, index) => ({
    says: 'A low, a middle and a high tone of the voice.',
    formula: 'f_t',
    where: {
      f_t: { value: [300, 1000, 2700][index] ?? 0, unit: 'Hz', says: 'a tone of the voice' },
    },
    source: 'ITU-R M.1173 has the voice from 350 to 2700 Hz',
  }),
  'tones.passed': (look) => ({
    says: 'The filter lets one of the modulator’s two products through.',
    formula: look('carrier.sideband') === 'lower' ? 'f_c - f_t' : 'f_c + f_t',
    where: { f_c: 'carrier.frequency', f_t: 'row.tone' },
    source: 'the Carrier sheet’s tone',
  }),
  'tones.added': {
    says: 'The mixer’s sum.',
    formula: 'f_lo + f_p',
    where: { f_lo: 'convert.oscillator', f_p: 'row.passed' },
    source: arithmetic,
  },
  'tones.subtracted': {
    says: 'The mixer’s difference.',
    formula: 'abs(f_lo - f_p)',
    where: { f_lo: 'convert.oscillator', f_p: 'row.passed' },
    source: arithmetic,
  },
  'tones.kept': (look) => ({
    says: 'The band-pass keeps the one that lies on the band.',
    formula: way(look) === 'adds' ? 'f_add' : 'f_sub',
    where: { f_add: 'row.added', f_sub: 'row.subtracted' },
    source: arithmetic,
  }),
  'tones.beside': {
    says: 'The tone at the antenna less the suppressed carrier there.',
    formula: 'f_k - f_tx',
    where: { f_k: 'row.kept', f_tx: 'convert.lands' },
    source: 'definition of a sideband',
  },
  'tones.side': {
    says: 'Below the suppressed carrier is the lower sideband.',
    formula: 'f_b / f_1 < 0 ? "lower" : "upper"',
    where: { f_b: 'row.beside', f_1: { value: 1, unit: 'Hz', says: 'one hertz' } },
    source: 'definition of a sideband',
  },
  image: byWay(
    'The frequency on the other side of the oscillator.',
    { adds: 'abs(f_lo - f_c)', takes: 'f_lo + f_c', turns: 'f_lo + f_c' },
    oscillatorAndCarrier,
  ),
  halfway: byWay(
    'Half the intermediate frequency from the oscillator, on the operating frequency’s side.',
    { adds: 'f_lo + f_c / 2', takes: 'abs(f_lo - f_c / 2)', turns: 'abs(f_lo - f_c / 2)' },
    oscillatorAndCarrier,
  ),
  carrierLeft: {
    says: 'Straight through the mixer’s imbalance, against the wanted signal after its loss.',
    formula: 'A_mix - A_bs',
    where: { A_mix: 'convert.mixerLoss', A_bs: 'convert.signalIsolation' },
    source: 'definition of isolation and conversion loss',
  },
  oscillatorLeft: {
    says: 'The oscillator less the balance, against the signal less the conversion loss.',
    formula: 'L_o - A_bo - (L_s - A_mix)',
    where: {
      L_o: 'convert.oscillatorLevel',
      A_bo: 'convert.oscillatorIsolation',
      L_s: 'convert.signalLevel',
      A_mix: 'convert.mixerLoss',
    },
    source: 'definition of isolation and conversion loss',
  },
};
