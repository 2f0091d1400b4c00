import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { receiveFields } from './fields.ts';
import { comfortablePath, milliwatt, s9, sum } from './referenceLevels.ts';
import { DB_PER_UNIT } from './sReports.ts';

const pressure = 'definition of the sensitivity, IEC 60268-5 and 60268-7 (from memory)';

type SoundKey =
  | 'setGain'
  | 'comfort'
  | 'loudest'
  | 'noiseSound'
  | 'humAllowed'
  | 'loudness.sound'
  | 'loudness.soundSet';

/** From watts in the speaker to the ear. */
export const soundWorkings: Pick<StageWorkings<typeof receiveFields>, SoundKey> = {
  setGain: (look) => ({
    says: 'What makes that station comfortable, as far as there is gain.',
    formula: 'min(A_af, 20 * log10(sqrt(P_ls * R_sp) / V_set))',
    where: {
      A_af: 'receive.audioGain',
      P_ls: comfortablePath(look),
      R_sp: 'receive.speaker',
      L_9: s9,
      d_S: { value: DB_PER_UNIT, unit: 'dB', says: 'a unit' },
      n_S: {
        value: Number(String(look('receive.setFor')).slice(1)),
        unit: '1',
        says: 'S-units of the station',
      },
      G_rx: 'receive.frontGain',
      R_det: 'transmit.modulatorImpedance',
      P_ref: milliwatt,
      V_set: {
        formula: 'sqrt(P_ref * 10^((L_9 + d_S * (n_S - 9) + G_rx) / 10) * R_det)',
        unit: 'Vrms',
        says: 'that station at the detector',
      },
    },
    source: 'definition of the decibel, ITU-R V.574',
  }),
  comfort: (look) =>
    heard(look, 'The comfortable power, if the chip can give it.', 'min(P_ls, P_af)', {
      P_ls: comfortablePath(look),
      P_af: 'receive.speakerMost',
    }),
  loudest: (look) =>
    heard(
      look,
      'Forty decibels over S9 with the volume as left, no more than the chip can give.',
      'min(P_ref * 10^((L_9 + d_40 + G_rx) / 10) * R_det * 10^(A_set / 10) / R_sp, P_af)',
      {
        ...leftAt,
        L_9: s9,
        d_40: { value: 40, unit: 'dB', says: 'over S9' },
        R_det: 'transmit.modulatorImpedance',
        G_rx: 'receive.frontGain',
        P_ref: milliwatt,
      },
    ),
  noiseSound: (look) =>
    heard(look, 'The noise at the detector, with the volume as left.', ofVolts('V_hum'), {
      ...leftAt,
      V_hum: 'receive.humAllowed',
    }),
  humAllowed: {
    says: 'Band noise and the receiver’s own, raised by the gain up to the detector, as a voltage.',
    formula: 'sqrt(P_ref * (10^(L_floor / 10) + 10^(L_bh / 10)) * 10^(G_rx / 10) * R_det)',
    where: {
      P_ref: milliwatt,
      L_floor: 'receive.floor',
      L_bh: 'receive.bandHere',
      G_rx: 'receive.frontGain',
      R_det: 'transmit.modulatorImpedance',
    },
    source: sum,
  },
  'loudness.sound': (look) =>
    heard(look, 'The power at the speaker as a sound.', 'P_spk', { P_spk: 'row.speaker' }),
  'loudness.soundSet': (look) =>
    heard(look, 'The detector’s voltage, with the volume as left.', ofVolts('V_d'), {
      ...leftAt,
      V_d: 'row.detector',
    }),
};

const leftAt = {
  A_set: 'receive.setGain',
  R_sp: 'receive.speaker',
  P_af: 'receive.speakerMost',
} as const;

const ofVolts = (volts: string) => `min((${volts} * 10^(A_set / 20))^2 / R_sp, P_af)`;

/** The sound pressure level of a power. */
function heard(look: Look, says: string, power: string, where: Record<string, Bound>): Working {
  const watts: Bound = { formula: power, unit: 'W', says: 'power in the speaker' };
  return look('receive.ears') === 'phones'
    ? {
        says,
        formula: 'S_ph + 10 * log10(P_x / P_1m)',
        where: {
          ...where,
          P_x: watts,
          S_ph: 'receive.phonesSensitivity',
          P_1m: { value: 1e-3, unit: 'W', says: 'power that the sensitivity is for' },
        },
        source: pressure,
      }
    : {
        says,
        formula: 'S_sp + 10 * log10(P_x / P_1) - 20 * log10(r_sp / r_1)',
        where: {
          ...where,
          P_x: watts,
          S_sp: 'receive.speakerSensitivity',
          P_1: { value: 1, unit: 'W', says: 'power that the sensitivity is for' },
          r_sp: 'receive.speakerDistance',
          r_1: { value: 1, unit: 'm', says: 'distance that it is for' },
        },
        source: pressure,
        assumes: 'Six decibels less for each doubling of the distance, as in the open.',
      };
}
