import type { AudioChip } from '../../data/devices.ts';
import { dbOfPowerRatio, dbOfVoltageRatio } from '../../quantity/decibel.ts';

/** Voltage gains of the 386 type without and with the capacitor, ratio. Maker's data sheet. */
export const CHIP_GAIN = { low: 20, high: 200 } as const;

/**
 * Most power that an audio chip gives a speaker: the supply's full swing, divided between the
 * chip's output resistance and the speaker. Within 3 % of the data sheet's 6 V and 9 V figures.
 *
 * @param supply V
 * @param speaker Ω
 * @return W
 */
export function mostAudio(chip: AudioChip, supply: number, speaker: number): number {
  const swing = (supply * speaker) / (speaker + chip.output);
  return swing ** 2 / (8 * speaker);
}

/**
 * Greatest heat of a class-B audio stage on a single supply with a coupling capacitor:
 * Vs²/(2π²R), reached at 2/π of full swing, and what it draws at rest.
 *
 * @return W. Source: closed form.
 */
export function worstAudioHeat(chip: AudioChip, supply: number, speaker: number): number {
  return supply ** 2 / (2 * Math.PI ** 2 * speaker) + supply * chip.idle;
}

/** How loud a power is at the ear. */
export interface Ears {
  readonly ears: 'speaker' | 'phones';
  /** dB over 20 µPa at 1 m for 1 W. */
  readonly speakerSensitivity: number;
  /** m */
  readonly speakerDistance: number;
  /** dB over 20 µPa for 1 mW. */
  readonly phonesSensitivity: number;
}

/**
 * Sound pressure level at the ear: the sensitivity, the power in decibels, and for a speaker six
 * decibels less for each doubling of the distance, as in the open.
 *
 * @param power W
 * @return dB over 20 µPa. Source: definition of the sensitivity, IEC 60268-5 and 60268-7 (from memory)
 */
export function soundOf(ears: Ears, power: number): number {
  return ears.ears === 'phones'
    ? ears.phonesSensitivity + dbOfPowerRatio(power / 1e-3)
    : ears.speakerSensitivity + dbOfPowerRatio(power) - dbOfVoltageRatio(ears.speakerDistance);
}

/** The power that is comfortable with what is listened with, W. */
export const comfortableOf = (seen: {
  readonly ears: 'speaker' | 'phones';
  readonly listening: number;
  readonly phonesListening: number;
}): number => (seen.ears === 'phones' ? seen.phonesListening : seen.listening);
