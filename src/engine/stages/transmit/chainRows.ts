import type { RowOf } from '../../fields/kinds.ts';
import { dbOfPowerRatio } from '../../quantity/decibel.ts';
import { dbmOfWatts, voltsOfDbm } from '../../quantity/power.ts';
import type { chain } from './chainFields.ts';
import { levelPlan, mismatchLoss } from './levelPlan.ts';
import type { TransmitSeen } from './seen.ts';
import type { SmallFigures } from './smallFigures.ts';

/** How far below its carrier a diode modulator begins to flatten, dB. Common practice, no source. */
export const MODULATOR_MARGIN = 6;

type Row = RowOf<typeof chain.columns>;

/** Gains from the modulator's audio side to the antenna, dB, in the signal's order. */
export function gainsBehindAudio(
  seen: TransmitSeen,
  small: SmallFigures,
  filterLoss: number,
): number[] {
  const { amplifierGain, driverGain } = small.results;
  return [
    -seen.conversionLoss,
    -seen.pad - mismatchLoss(small.first.input, seen.modulatorImpedance, seen.frequency),
    amplifierGain,
    0,
    -filterLoss,
    0,
    amplifierGain,
    0,
    driverGain,
    0,
    seen.finalGain,
    -seen.network,
  ];
}

/** Every point of the chain: level, voltages, impedances, headroom. */
export function chainRows(
  seen: TransmitSeen,
  small: SmallFigures,
  rig: {
    readonly ends: number;
    readonly endsLoad: number;
    readonly filterLoss: number;
    readonly filterSource: number;
    readonly collectorLoad: number;
    readonly outputImpedance: number;
    /** Voltage gain of the microphone amplifier in use, dB. */
    readonly micGain: number;
    /** Drive against full power, dB. */
    readonly over: number;
  },
): Row[] {
  const { follower, first, second, driver, results } = small;
  const micPower = rig.micGain + dbOfPowerRatio(results.micLoad / seen.modulatorImpedance);
  const gains = [micPower, ...gainsBehindAudio(seen, small, rig.filterLoss)];
  const { onward } = levelPlan(gains, 0);
  const collector = (limitedBy: 'current' | 'voltage') =>
    limitedBy === 'current' ? 'standing current' : 'supply voltage';

  // point, load, source, limit in dBm and in words
  const points: [string, number, number | null, number | null, string | null][] = [
    ['Microphone', results.micLoad, null, null, null],
    [
      'Modulator, audio side',
      seen.modulatorImpedance,
      follower.output.r,
      results.followerClip,
      follower.limitedBy === 'current'
        ? 'microphone amplifier’s current'
        : 'supply of the microphone amplifier',
    ],
    [
      'Modulator, output',
      seen.modulatorImpedance,
      seen.modulatorImpedance,
      dbmOfWatts(seen.carrierDrive) - MODULATOR_MARGIN - seen.conversionLoss,
      'carrier drive of the modulator',
    ],
    ['First amplifier, input', first.input.r, seen.modulatorImpedance, null, null],
    [
      'First amplifier, collector',
      seen.amplifierLoad,
      first.output.r,
      results.amplifierClip,
      collector(first.limitedBy),
    ],
    ['Filter, input', rig.ends, rig.filterSource, dbmOfWatts(seen.filterDrive), 'crystals'],
    ['Filter, output', rig.endsLoad, rig.endsLoad, null, null],
    ['Second amplifier, input', first.input.r, first.input.r, null, null],
    [
      'Second amplifier, collector',
      seen.amplifierLoad,
      second.output.r,
      results.amplifierClip,
      collector(second.limitedBy),
    ],
    ['Driver, input', driver.input.r, results.driverSource, null, null],
    [
      'Driver, collector',
      seen.driverLoad,
      (driver.output.r * seen.driverLoad) / seen.finalInput,
      results.driverClip,
      collector(driver.limitedBy),
    ],
    ['Final, base', seen.finalInput, driver.output.r, null, null],
    [
      'Final, collector',
      rig.collectorLoad,
      rig.outputImpedance,
      seen.pepLevel + seen.network,
      'supply voltage',
    ],
    ['Antenna', seen.antenna, null, null, null],
  ];
  return points.map(([point, load, source, clip, limit], i) => {
    const toAntenna = onward[i] ?? 0;
    const level = seen.pepLevel + rig.over - toAntenna;
    return {
      point,
      level,
      vpp: voltsOfDbm(level, 'Vpp', load),
      vrms: voltsOfDbm(level, 'Vrms', load),
      load,
      source,
      gain: gains[i] ?? null,
      toAntenna,
      clip,
      headroom: clip === null ? null : clip - level,
      limit,
    };
  });
}
