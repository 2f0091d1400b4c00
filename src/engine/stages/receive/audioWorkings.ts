import { type AudioChipKey, audioChips } from '../../data/devices.ts';
import type { Bound, Look, StageWorkings } from '../../fields/workings.ts';
import { CHIP_GAIN } from './audio.ts';
import type { receiveFields } from './fields.ts';
import { comfortablePath, milliwatt, s9, sUnits, sum } from './referenceLevels.ts';
import { DB_PER_UNIT } from './sReports.ts';

const chipOf = (look: Look) => audioChips[look('receive.chip') as AudioChipKey] ?? audioChips.a386;

function chipGain(look: Look): Bound {
  const value = CHIP_GAIN[look('receive.chipGain') as keyof typeof CHIP_GAIN] ?? CHIP_GAIN.high;
  return { value, unit: '1', says: 'voltage gain of the chip', source: chipOf(look).source };
}

function chipIdle(look: Look): Bound {
  const chip = chipOf(look);
  return { value: chip.idle, unit: 'A', says: 'audio chip at rest', source: chip.source };
}

const detectorFormula = 'sqrt(P_ref * 10^((L_sig + G_rx) / 10) * R_det)';
const detector = {
  P_ref: milliwatt,
  G_rx: 'receive.frontGain',
  R_det: 'transmit.modulatorImpedance',
} as const;

type AudioKey =
  | 'detectorVolts'
  | 'audioGain'
  | 'gain'
  | 'audioVoltage'
  | 'speakerMost'
  | 'chipHeat'
  | 'loudness.report'
  | 'loudness.level'
  | 'loudness.antennaVolts'
  | 'loudness.detector'
  | 'loudness.speaker'
  | 'loudness.needed';

/** From the detector to the speaker: gain, loudness. */
export const audioWorkings: Pick<StageWorkings<typeof receiveFields>, AudioKey> = {
  detectorVolts: {
    says: 'S9 raised by the gain up to here, as a voltage across the detector’s impedance.',
    formula: detectorFormula,
    where: { ...detector, L_sig: s9 },
    source: 'closed form: P = V²/R',
  },
  audioGain: (look) => ({
    says: 'Preamplifier and chip.',
    formula: 'A_pre + 20 * log10(A_chip)',
    where: { A_pre: 'receive.preampGain', A_chip: chipGain(look) },
    source: sum,
  }),
  gain: {
    says: 'Gain up to the detector, audio gain, and the change of resistance from detector to speaker.',
    formula: 'G_rx + A_af + 10 * log10(R_det / R_sp)',
    where: {
      G_rx: 'receive.frontGain',
      A_af: 'receive.audioGain',
      R_det: 'transmit.modulatorImpedance',
      R_sp: 'receive.speaker',
    },
    source: sum,
  },
  audioVoltage: (look) => {
    const chip = chipOf(look);
    return look('receive.audioSupply') === null
      ? {
          says: 'The rig’s supply, or the most that the chip takes in use.',
          formula: 'min(V_cc, V_chip)',
          where: {
            V_cc: 'plan.supply',
            V_chip: {
              value: chip.supply[1],
              unit: 'V',
              says: 'most in use',
              source: chip.source,
            },
          },
          source: chip.source,
        }
      : {
          says: 'As given.',
          formula: 'V_a0',
          where: { V_a0: 'receive.audioSupply' },
          source: 'as typed',
        };
  },
  speakerMost: (look) => {
    const chip = chipOf(look);
    return {
      says: 'The supply’s full swing, divided between chip and speaker.',
      formula: '(V_a * R_sp / (R_sp + R_chip))^2 / (8 * R_sp)',
      where: {
        V_a: 'receive.audioVoltage',
        R_sp: 'receive.speaker',
        R_chip: {
          value: chip.output,
          unit: 'Ω',
          says: 'what stands between supply and speaker, fitted to the data sheet at 6 V and 9 V',
          source: chip.source,
        },
      },
      source: 'closed form: P = Vpp²/(8R)',
      assumes: 'The coupling capacitor is large enough.',
    };
  },
  chipHeat: (look) => ({
    says: 'A class-B stage heats most at 2/π of its full swing; what it draws at rest comes on top.',
    formula: 'V_a^2 / (2 * pi^2 * R_sp) + V_a * I_q_chip',
    where: {
      V_a: 'receive.audioVoltage',
      R_sp: 'receive.speaker',
      I_q_chip: chipIdle(look),
    },
    source: 'closed form',
  }),
  'loudness.report': {
    says: 'From S1 to S9, and 10 to 40 dB over.',
    rule: 'A fixed list.',
    where: {},
    source: sUnits,
  },
  'loudness.level': (_, index) =>
    index < 9
      ? {
          says: 'Six decibels for each unit below S9.',
          formula: 'L_9 + d_S * (n - 8)',
          where: {
            L_9: s9,
            d_S: { value: DB_PER_UNIT, unit: 'dB', says: 'a unit', source: sUnits },
            n: 'index',
          },
          source: sUnits,
        }
      : {
          says: 'So many decibels over S9.',
          formula: 'L_9 + 10 * (n - 8)',
          where: { L_9: s9, n: 'index' },
          source: sUnits,
        },
  'loudness.antennaVolts': {
    says: 'The voltage of that power across the antenna resistance.',
    formula: 'sqrt(P_ref * 10^(L_sig / 10) * R_ant)',
    where: { P_ref: milliwatt, L_sig: 'row.level', R_ant: 'plan.antenna' },
    source: 'closed form: P = V²/R',
  },
  'loudness.detector': {
    says: 'The signal raised by the gain up to here, as a voltage.',
    formula: detectorFormula,
    where: { ...detector, L_sig: 'row.level' },
    source: 'closed form: P = V²/R',
  },
  'loudness.speaker': {
    says: 'The detector’s voltage raised by all audio gain, as power in the speaker; no more than the chip can give.',
    formula: 'min((V_d * 10^(A_af / 20))^2 / R_sp, P_af)',
    where: {
      V_d: 'row.detector',
      A_af: 'receive.audioGain',
      R_sp: 'receive.speaker',
      P_af: 'receive.speakerMost',
    },
    source: 'closed form: P = V²/R',
  },
  'loudness.needed': (look) => ({
    says: 'From the detector’s voltage up to the one that is comfortable.',
    formula: '20 * log10(sqrt(P_ls * R_sp) / V_d)',
    where: { P_ls: comfortablePath(look), R_sp: 'receive.speaker', V_d: 'row.detector' },
    source: 'definition of the decibel, ITU-R V.574',
  }),
};
