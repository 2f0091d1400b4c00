import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { CarrierLeft } from './carrierLeft.ts';
import { placeNames } from './chainPlaces.ts';
import type { Levels } from './levels.ts';
import type { TransmitSeen } from './seen.ts';

/**
 * Gain, headroom and what is left of the carrier.
 *
 * @param reached balance that the modulator's parts reach, dB
 * @param micStageGain voltage gain of the microphone amplifier as built, dB
 */
export function levelCautions(
  seen: TransmitSeen,
  { results }: Levels,
  { carrierSuppression, balance }: CarrierLeft,
  reached: number | null,
  micStageGain: number,
): Problem[] {
  const problems: Problem[] = [];
  const warn = (key: string, says: string, help: string) =>
    problems.push({ field: `transmit.${key}`, weight: 'warns', says, try: help });
  const { micGain, chain, over, filterSource } = results;
  if (micGain !== null && micGain > 46) {
    warn(
      'micLevel',
      `The microphone would need ${format(micGain, 'dB', 3)} of gain: more than two common stages give without hum.`,
      'Less pad, more gain in amplifiers or driver, or a stronger microphone.',
    );
  }
  if (micGain !== null && seen.micFitted === null && micGain > micStageGain + 0.5) {
    warn(
      'micEmitter',
      `The microphone amplifier as built has ${format(micStageGain, 'dB', 3)} of gain; full power needs ${format(micGain, 'dB', 3)}.`,
      'A smaller emitter resistor there, less pad, or more gain in amplifiers or driver.',
    );
  }
  if (micGain !== null && micGain < 0) {
    warn(
      'micLevel',
      `The chain has ${format(-micGain, 'dB', 3)} more gain than the microphone needs.`,
      'More pad behind the modulator: it also puts the sideband further above the carrier’s rest.',
    );
  }
  // Does anything flatten before the final does?
  for (const row of chain ?? []) {
    if (row.headroom === null || row.headroom >= 0 || row.point === 'Final, collector') continue;
    const [key, help] = cure(row.point ?? '', row.limit?.startsWith('supply') ?? false);
    warn(
      key,
      `${row.point}: ${format(-row.headroom, 'dB', 3)} more than it can give before it flattens (${row.limit}).`,
      help,
    );
  }
  if (over !== null && over > 0.5) {
    warn(
      'micFitted',
      `The amplifier that you have drives the final ${format(over, 'dB', 3)} past full power: it flattens and splatters.`,
      'Turn the microphone gain down until more speech makes no more watts, then a little further.',
    );
  }
  if (over !== null && over < -3) {
    warn(
      'micFitted',
      `The amplifier that you have leaves ${format(-over, 'dB', 3)} of drive unused.`,
      'More microphone gain, or less pad.',
    );
  }
  if (
    filterSource !== null &&
    seen.ends !== null &&
    Math.abs(Math.log(filterSource / seen.ends)) > Math.log(1.3)
  ) {
    warn(
      'amplifierLoad',
      `The filter sees ${format(filterSource, 'Ω', 3)} at its input instead of ${format(seen.ends, 'Ω', 3)}: expect ripple.`,
      'Choose feedback and emitter resistors so that the output resistance equals the load.',
    );
  }
  if (carrierSuppression !== null && carrierSuppression < 40) {
    warn(
      'null',
      `The carrier is only ${format(carrierSuppression, 'dB', 3)} down.`,
      'A better null, or the carrier further out on the filter’s skirt: 40 dB is the least, 50 dB good.',
    );
  }
  if (seen.null !== null && balance !== null && balance > (reached ?? 65) + 6) {
    warn(
      'null',
      `That null asks for ${format(balance, 'dB', 3)} of balance from carrier drive to output${reached === null ? '' : `; these parts reach ${format(reached, 'dB', 3)}`}.`,
      'Measure it again with the audio at full speech, or a finer trimmer and diodes more alike.',
    );
  }
  // The products were reckoned with another level at the mixer?
  const mixer = chain?.find(({ point }) => point === placeNames.mixerIn)?.level ?? null;
  if (mixer !== null && Math.abs(mixer - seen.signalLevel) > 3) {
    problems.push({
      field: 'convert.signalLevel',
      weight: 'warns',
      says: `The mixer gets ${format(mixer, 'dBm', 3)} at full power; Conversion and Products reckon with ${format(seen.signalLevel, 'dBm', 3)}.`,
      try: 'The same figure there; ten decibels and more below the oscillator keep the voice clean.',
    });
  }
  if (results.modulatorMargin !== null && results.modulatorMargin < LEAST_MARGIN) {
    warn(
      'carrierDrive',
      `The carrier is only ${format(results.modulatorMargin, 'dB', 3)} above the audio: the voice does some of the switching.`,
      `At least ${LEAST_MARGIN} dB: more carrier, or less pad so that less audio does.`,
    );
  }
  return problems;
}

/** Carrier over audio that a diode modulator wants, dB. Common practice, no source. */
const LEAST_MARGIN = 10;

/** What helps at a point, by whether volts run out there or amperes. */
function cure(point: string, volts: boolean): readonly [string, string] {
  if (point.startsWith('Driver')) {
    return volts
      ? [
          'driverLoad',
          'A lower load with more standing current for the driver, a higher supply, or a final with more gain.',
        ]
      : [
          'driverBridged',
          'More standing current for the driver (a smaller emitter resistor) or a higher load, or a final with more gain.',
        ];
  }
  if (point.startsWith('Mixer')) {
    return [
      'thirdAmplifier',
      'More gain behind the band-pass, or a mixer of a higher level class.',
    ];
  }
  if (point.startsWith('Filter'))
    return ['filterDrive', 'More gain behind the filter and less before.'];
  if (point.startsWith('Microphone')) {
    return [
      'micBridged',
      'A larger emitter resistor without capacitor there, or the microphone a little further off.',
    ];
  }
  if (point.startsWith('Modulator, output')) {
    return [
      'carrierDrive',
      'More carrier drive, or less pad so that the modulator works at a lower level.',
    ];
  }
  if (point.startsWith('Modulator')) {
    return [
      'followerEmitter',
      `${volts ? 'A higher supply for' : 'More current in the follower of'} the microphone amplifier, or less pad.`,
    ];
  }
  if (volts) {
    return [
      'amplifierLoad',
      'A lower load with more standing current beside the filter, a higher supply, or more gain in driver and final.',
    ];
  }
  return [
    'amplifierBridged',
    'More standing current beside the filter (a smaller emitter resistor), or more gain in driver and final.',
  ];
}
