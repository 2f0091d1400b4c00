import { audioChips } from '../../data/devices.ts';
import { HEARING } from '../../data/hearing.ts';
import { noiseClasses } from '../../data/noiseClasses.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { comfortableOf } from './audio.ts';
import type { ReceiveSeen } from './seen.ts';

/** What the receiver can't do, and what would help. */
export function receiveCautions(
  seen: ReceiveSeen,
  worked: {
    readonly noiseRise: number;
    readonly speakerMost: number;
    readonly audioVoltage: number;
    readonly chipHeat: number;
    readonly audioGain: number;
    readonly comfort: number;
    readonly loudest: number | null;
    readonly loudness: readonly { readonly report: string; readonly needed: number }[];
  },
): Problem[] {
  const problems: Problem[] = [];
  const warn = (key: string, says: string, help: string) =>
    problems.push({ field: `receive.${key}`, weight: 'warns', says, try: help });
  const chip = audioChips[seen.chip];
  const [least, most] = chip.supply;

  // Will the antenna be heard at all over the receiver's own noise?
  if (worked.noiseRise < 5) {
    warn(
      'frontLoss',
      `The noise rises by only ${format(worked.noiseRise, 'dB', 3)} with the antenna: weak signals drown in the receiver’s own noise.`,
      'Less loss before the first amplifier, or more gain there.',
    );
  }
  if (seen.thirdServes === 'yes' && seen.scheme === 'conversion' && seen.thirdGain === null) {
    warn(
      'thirdServes',
      'There is no third amplifier in this rig: reckoned without one.',
      'Say in Transmit that there is one, or here that there is none.',
    );
  }
  const place = noiseClasses[seen.place];
  if (seen.frequency < place.from || seen.frequency > place.to) {
    warn(
      'place',
      `The line for this place is given from ${format(place.from, 'Hz', 2)} to ${format(place.to, 'Hz', 2)}.`,
      'Take the figure as a rough guide.',
    );
  }
  // Does the chip bear its supply and its speaker?
  if (worked.audioVoltage > most || worked.audioVoltage < least) {
    warn(
      seen.audioSupply === null ? 'chip' : 'audioSupply',
      `${format(worked.audioVoltage, 'V', 2)} is outside the ${format(least, 'V', 2)} to ${format(most, 'V', 2)} that this chip works on.`,
      worked.audioVoltage > most
        ? 'A regulator, or the chip for a higher voltage.'
        : 'A transistor output stage for so low a supply.',
    );
  }
  if (worked.chipHeat > chip.power) {
    warn(
      'speaker',
      `The chip could turn ${format(worked.chipHeat, 'W', 2)} into heat; its package bears ${format(chip.power, 'W', 2)}.`,
      'A speaker of more ohms, or a lower supply for the chip.',
    );
  }
  const phones = seen.ears === 'phones';
  const listening = phones ? 'phonesListening' : 'listening';
  if (comfortableOf(seen) > worked.speakerMost) {
    warn(
      listening,
      `This chip gives at most ${format(worked.speakerMost, 'W', 2)} here.`,
      'A higher supply for the chip, a speaker of fewer ohms, or headphones.',
    );
  }
  // Can it hurt?
  if (worked.comfort > HEARING.eightHours) {
    warn(
      listening,
      `What is called comfortable here comes to ${format(worked.comfort, 'dB', 2)} at the ear: too loud for hours on end.`,
      phones
        ? 'Headphones need microwatts: ten of them make some 80 dB in usual ones.'
        : 'Less power, or the speaker farther away.',
    );
  }
  if (worked.loudest !== null && worked.loudest > HEARING.quarterHour) {
    warn(
      phones ? 'phonesSensitivity' : 'speakerSensitivity',
      `A strong station would come up with ${format(worked.loudest, 'dB', 2)} at the ear: such levels harm the hearing within a quarter of an hour or less.`,
      phones
        ? 'Less volume, and a resistor in series with the headphones; diodes back to back hold the voltage before it.'
        : 'Less volume, or the speaker farther away.',
    );
  }
  // Is a weak station loud enough with the volume full up?
  const s5 = worked.loudness.find(({ report }) => report === 'S5');
  if (s5 && s5.needed > worked.audioGain + 3) {
    warn(
      'preampGain',
      `S5 would need ${format(s5.needed, 'dB', 3)} of audio gain; there is ${format(worked.audioGain, 'dB', 3)}.`,
      'More gain in the audio preamplifier, or headphones.',
    );
  }
  if (worked.audioGain > 95) {
    warn(
      'preampGain',
      `${format(worked.audioGain, 'dB', 3)} of audio gain will sing and hum.`,
      'More gain before the detector instead.',
    );
  }
  return problems;
}
