import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { type Place, placesOf } from './chainPlaces.ts';
import type { transmitFields } from './fields.ts';

const decibel = 'definition of the decibel, ITU-R V.574';
export const milliwatt = { value: 1e-3, unit: 'W', says: 'one milliwatt' } as const;
/** What lies behind each place from the modulator's audio side on, losses with a minus. */
const behind: Readonly<Partial<Record<Place, readonly (readonly [string, string])[]>>> = {
  audio: [['-L_mod', 'transmit.modulatorLoss']],
  modulator: [
    ['-L_pad', 'transmit.pad'],
    ['-L_mis', ''],
  ],
  firstIn: [['+G_amp', 'transmit.amplifierGain']],
  filterIn: [['-L_fil', 'filter.loss']],
  secondIn: [['+G_amp', 'transmit.amplifierGain']],
  mixerIn: [['-A_mix', 'convert.mixerLoss']],
  mixerOut: [['-A_bp', 'front.loss']],
  thirdIn: [['+G_3', 'transmit.thirdGain']],
  driverIn: [['+G_drv', 'transmit.driverGain']],
  base: [['+G_fin', 'transmit.finalGain']],
  collector: [['-L_net', 'transmit.network']],
};

/** The places of the rig that is looked at. */
export const placesSeen = (look: Look): readonly Place[] =>
  placesOf({
    scheme: look('plan.scheme') as string,
    thirdAmplifier: look('transmit.thirdAmplifier') as string,
  });

/** What is lost between the pad and the first amplifier, as a step. */
export const mismatch: Readonly<Record<string, Bound>> = {
  R_in: 'transmit.amplifierInput',
  R_mod: 'transmit.modulatorImpedance',
  C_in: 'transmit.amplifierInputC',
  f_0: 'plan.filterFrequency',
  L_mis: {
    formula:
      '-10 * log10(4 / (R_in * R_mod) / ((1 / R_in + 1 / R_mod)^2 + (2 * pi * f_0 * C_in)^2))',
    unit: 'dB',
    says: 'lost because pad and amplifier don’t match',
  },
};

/** A sum of the gains from a place on, with what its symbols stand for. */
export function gainsFrom(
  look: Look,
  first: Place,
): { formula: string; where: Record<string, Bound> } {
  const places = placesSeen(look);
  const terms = places.slice(places.indexOf(first)).flatMap((place) => behind[place] ?? []);
  return sumOf(terms);
}

/** What lies between a place and the next. */
export const gainAt = (place: Place) => sumOf(behind[place] ?? []);

function sumOf(terms: readonly (readonly [string, string])[]) {
  const where: Record<string, Bound> = {};
  for (const [term, path] of terms) {
    if (path === '') Object.assign(where, mismatch);
    else where[term.slice(1)] = path;
  }
  const formula = terms.map(([term]) => `${term[0]} ${term.slice(1)}`).join(' ');
  return { formula: formula.replace(/^\+ /, '').replace(/^- /, '-') || '0', where };
}

type LevelKey =
  | 'micGain'
  | 'audioLevel'
  | 'audioVolts'
  | 'netGain'
  | 'over'
  | 'first'
  | 'reserve'
  | 'volumeDown'
  | 'builtPower'
  | 'builtFirst'
  | 'builtFirstAt'
  | 'filterSource'
  | 'couplings.place'
  | 'couplings.collector'
  | 'couplings.following'
  | 'couplings.turns'
  | 'carrierSuppression'
  | 'carrierPower'
  | 'carrierVpp'
  | 'balance'
  | 'oppositeWorst';

export const levelWorkings: Pick<StageWorkings<typeof transmitFields>, LevelKey> = {
  micGain: {
    says: 'From the microphone’s voltage up to what the modulator needs.',
    formula: '20 * log10(V_aud / V_mic)',
    where: { V_aud: 'transmit.audioVolts', V_mic: 'transmit.micLevel' },
    source: decibel,
  },
  audioLevel: (look) => {
    const { formula, where } = gainsFrom(look, 'audio');
    return {
      says: 'Back from the antenna through every gain and loss to the modulator’s audio side.',
      formula: `L_PEP - (${formula})`,
      where: { L_PEP: 'plan.pepLevel', ...where },
      source: 'sum of decibels',
    };
  },
  audioVolts: {
    says: 'The voltage of that power in the modulator’s impedance.',
    formula: 'sqrt(P_ref * 10^(L_aud / 10) * R_mod)',
    where: {
      P_ref: milliwatt,
      L_aud: 'transmit.audioLevel',
      R_mod: 'transmit.modulatorImpedance',
    },
    source: 'closed form: P = V²/R',
  },
  netGain: (look) => {
    const { formula, where } = gainsFrom(look, 'modulator');
    return {
      says: 'Every gain and loss from the sideband at the modulator to the antenna.',
      formula,
      where,
      source: 'sum of decibels',
    };
  },
  over: (look) =>
    look('transmit.micFitted') === null
      ? {
          says: 'No gain is given, so the one that just makes full power is used.',
          formula: '0',
          where: {},
          source: 'as typed',
        }
      : {
          says: 'The gain that you have, against the gain that just makes full power.',
          formula: 'A_fit - A_mic',
          where: { A_fit: 'transmit.micFitted', A_mic: 'transmit.micGain' },
          source: 'sum of decibels',
        },
  first: {
    says: 'The row of the levels with the least headroom.',
    rule: 'All rows with a limit are compared; the least headroom flattens first.',
    where: { H_min: 'transmit.reserve' },
    source: 'definition',
  },
  reserve: (look) => {
    const rows = ((look('transmit.chain') as Row[] | null) ?? []).filter(
      (row) => row.headroom !== null && row.point !== 'Final, collector',
    );
    const where: Record<string, Bound> = {};
    rows.forEach((row, i) => {
      where[`H_${i + 1}`] = { value: row.headroom ?? 0, unit: 'dB', says: row.point ?? '' };
    });
    return {
      says: 'The least of the headrooms in the table, the final’s left out.',
      formula: `min(${Object.keys(where).join(', ')})`,
      where,
      source: 'definition',
    };
  },
  volumeDown: (look) => ({
    says: 'The gain as built less the gain needed.',
    formula: look('transmit.micFitted') === null ? 'A_two - A_mic' : 'A_fit - A_mic',
    where: {
      ...(look('transmit.micFitted') === null
        ? { A_two: 'transmit.micStageGain' }
        : { A_fit: 'transmit.micFitted' }),
      A_mic: 'transmit.micGain',
    },
    source: 'sum of decibels',
  }),
  builtPower: (look) => ({
    says: 'The last row of the levels as built, in watts.',
    formula: 'P_ref * 10^(L_last / 10)',
    where: {
      P_ref: milliwatt,
      L_last: {
        value: (look('transmit.chain') as Row[] | null)?.at(-1)?.forward ?? 0,
        unit: 'dBm',
        says: 'level as built at the antenna, from the levels',
      },
    },
    source: decibel,
  }),
  builtFirst: {
    says: 'The row whose headroom is least with the volume full up.',
    rule: 'All rows with a limit are compared.',
    where: { V_flat: 'transmit.builtFirstAt' },
    source: 'definition',
  },
  builtFirstAt: (look) => {
    const rows = ((look('transmit.chain') as Row[] | null) ?? []).filter(
      (row) => row.headroom !== null,
    );
    const where: Record<string, Bound> = { V_mic: 'transmit.micLevel', ...volumeUp(look) };
    const terms = rows.map((row, i) => {
      where[`H_${i + 1}`] = { value: row.headroom ?? 0, unit: 'dB', says: row.point ?? '' };
      return i === 0 ? 'H_1' : `H_${i + 1} - D_up`;
    });
    return {
      says: 'The voice may rise by the least headroom. The volume control stands behind the first transistor.',
      formula: `V_mic * 10^(min(${terms.join(', ')}) / 20)`,
      where,
      source: decibel,
    };
  },
  filterSource: {
    says: 'The first amplifier’s output resistance through the transformer that makes of the filter its load.',
    formula: 'R_out * R_end / R_L',
    where: {
      R_out: 'transmit.amplifierOutput',
      R_end: 'filter.ends',
      R_L: 'transmit.amplifierLoad',
    },
    source: 'ideal transformer',
  },
  'couplings.place': {
    says: 'The places where impedances meet.',
    rule: 'In the signal’s order.',
    where: {},
    source: 'definition',
  },
  'couplings.collector': (look, index) => coupling(look, index).collector,
  'couplings.following': (look, index) => coupling(look, index).following,
  'couplings.turns': {
    says: 'Impedances go as the square of the turns.',
    formula: 'sqrt(R_1 / R_2)',
    where: { R_1: 'row.collector', R_2: 'row.following' },
    source: 'ideal transformer',
  },
  carrierSuppression: {
    says: 'The filter takes off what the modulator’s null has left.',
    formula: 'A_null + A_fil',
    where: { A_null: 'transmit.modulatorNull', A_fil: 'carrier.attenuation' },
    source: 'sum of decibels',
    assumes: 'Nothing leaks round filter and modulator.',
  },
  carrierPower: {
    says: 'So many decibels below the peak envelope power.',
    formula: 'P_PEP / 10^(A_car / 10)',
    where: { P_PEP: 'plan.pep', A_car: 'transmit.carrierSuppression' },
    source: decibel,
  },
  carrierVpp: {
    says: 'The same as a voltage across the antenna resistance.',
    formula: 'sqrt(8 * P_PEP * R_ant) / 10^(A_car / 20)',
    where: {
      P_PEP: 'plan.pep',
      R_ant: 'plan.antenna',
      A_car: 'transmit.carrierSuppression',
    },
    source: 'closed form: P = Vpp²/(8R)',
  },
  balance: {
    says: 'The carrier’s drive, less the sideband at the modulator and the null below it.',
    formula: '10 * log10(P_LO / P_ref) - (L_PEP - G_net - A_null)',
    where: {
      P_LO: 'transmit.carrierDrive',
      P_ref: milliwatt,
      L_PEP: 'plan.pepLevel',
      G_net: 'transmit.netGain',
      A_null: 'transmit.modulatorNull',
    },
    source: 'sum of decibels',
  },
  oppositeWorst: {
    says: 'So many decibels below the peak envelope power, at the voice tone that fares worst.',
    formula: 'P_PEP / 10^(A_opp / 10)',
    where: { P_PEP: 'plan.pep', A_opp: 'carrier.suppressionWorst' },
    source: decibel,
  },
};

interface Row {
  readonly point: string | null;
  readonly headroom: number | null;
  readonly forward: number | null;
}

/** How much more the amplifier gives as built than in the levels for full power. */
export const volumeUp = (look: Look): Record<string, Bound> =>
  look('transmit.micFitted') === null
    ? { D_up: 'transmit.volumeDown' }
    : { D_up: { value: 0, unit: 'dB', says: 'the gain that you have is in the levels already' } };

/** Both sides of each transformer between two stages, by its place. */
const couplings: Readonly<Record<string, { collector: Working; following: Working }>> = {
  'First amplifier to filter': {
    collector: amplifier(),
    following: same('R_end', 'filter.ends', 'The filter’s end resistance.'),
  },
  'Filter to second amplifier': {
    collector: same(
      'R_end_L',
      'filter.endsLoad',
      'The resistance that the filter’s output is designed for.',
    ),
    following: same('R_in', 'transmit.amplifierInput', 'The second amplifier’s input.'),
  },
  'Second amplifier to driver': {
    collector: amplifier(),
    following: same('R_in_drv', 'transmit.driverInput', 'The driver’s input.'),
  },
  'Second amplifier to mixer': {
    collector: amplifier(),
    following: same('R_e', 'front.end', 'What mixer and band-pass are made for.'),
  },
  'Band-pass to driver': {
    collector: same('R_e', 'front.end', 'What the band-pass is made for.'),
    following: same('R_in_drv', 'transmit.driverInput', 'The driver’s input.'),
  },
  'Band-pass to third amplifier': {
    collector: same('R_e', 'front.end', 'What the band-pass is made for.'),
    following: same('R_in3', 'transmit.thirdInput', 'The third amplifier’s input.'),
  },
  'Third amplifier to driver': {
    collector: amplifier(),
    following: same('R_in_drv', 'transmit.driverInput', 'The driver’s input.'),
  },
  'Driver to final': {
    collector: same('R_L_drv', 'transmit.driverLoad', 'The load that the driver is designed for.'),
    following: same('R_base', 'transmit.finalInput', 'The final’s base.'),
  },
};

function coupling(look: Look, index: number) {
  const rows = look('transmit.couplings') as readonly { readonly place: string }[];
  const found = couplings[rows[index]?.place ?? ''];
  if (!found) throw new Error(`no coupling ${index}`);
  return found;
}

function amplifier(): Working {
  return same('R_L', 'transmit.amplifierLoad', 'The load that the amplifier is designed for.');
}

function same(symbol: string, path: string, says: string): Working {
  return { says, formula: symbol, where: { [symbol]: path }, source: 'as designed' };
}
