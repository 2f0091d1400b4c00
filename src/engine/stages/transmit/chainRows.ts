import type { RowOf } from '../../fields/kinds.ts';
import { dbOfPowerRatio, dbOfVoltageRatio } from '../../quantity/decibel.ts';
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
  rig: { readonly filterLoss: number; readonly modulatorLoss: number },
): number[] {
  const { amplifierGain, driverGain } = small.results;
  return [
    -rig.modulatorLoss,
    -seen.pad - mismatchLoss(small.first.input, seen.modulatorImpedance, seen.frequency),
    amplifierGain,
    0,
    -rig.filterLoss,
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
    readonly modulatorLoss: number;
    /** How far the carrier lies below a sideband at the modulator, dB; null if that isn't known. */
    readonly modulatorNull: number | null;
    readonly filterSource: number;
    readonly collectorLoad: number;
    readonly outputImpedance: number;
    /** Voltage gain of the microphone amplifier in use, dB. */
    readonly micGain: number;
    /** Drive against full power, dB. */
    readonly over: number;
    /** How much more gain the microphone amplifier has as built with its volume full up, dB. */
    readonly builtUp: number;
  },
): Row[] {
  const { mic, follower, first, second, driver, results } = small;
  const micPower = rig.micGain + dbOfPowerRatio(results.micLoad / seen.modulatorImpedance);
  const micFirst =
    dbOfVoltageRatio(mic.volts) + dbOfPowerRatio(results.micLoad / results.followerInput);
  const gains = [micFirst, micPower - micFirst, ...gainsBehindAudio(seen, small, rig)];
  const { onward } = levelPlan(gains, 0);
  const collector = (limitedBy: 'current' | 'voltage') =>
    limitedBy === 'current' ? 'standing current' : 'supply voltage';

  // point, load, source, limit in dBm and in words
  const points: [string, number, number | null, number | null, string | null][] = [
    ['Microphone', results.micLoad, null, null, null],
    [
      'Microphone amplifier, collector',
      results.followerInput,
      results.followerSource,
      results.micClip,
      mic.limitedBy === 'current' ? 'standing current' : 'supply of the microphone amplifier',
    ],
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
      dbmOfWatts(seen.carrierDrive) - MODULATOR_MARGIN - rig.modulatorLoss,
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
  let before = 0;
  return points.map(([point, load, source, clip, limit], i) => {
    const toAntenna = onward[i] ?? 0;
    const level = seen.pepLevel + rig.over - toAntenna;
    const comes =
      i === 0 ? level : before + (gains[i - 1] ?? 0) + (i === MODULATOR_AUDIO ? rig.builtUp : 0);
    const forward = clip === null ? comes : Math.min(comes, clip);
    before = forward;
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
      forward,
      forwardVpp: voltsOfDbm(forward, 'Vpp', load),
      ...leftovers(seen, rig.modulatorNull, i, level),
    };
  });
}

/** Rows of the modulator's audio side and of the filter's output. */
export const MODULATOR_AUDIO = 2;
export const FILTER_OUTPUT = 7;

/** Carrier and other sideband at a point: both are there from the modulator's output on. */
function leftovers(seen: TransmitSeen, modulatorNull: number | null, row: number, level: number) {
  if (row <= MODULATOR_AUDIO) return { carrier: null, opposite: null, oppositeWorst: null };
  const behind = row >= FILTER_OUTPUT;
  const less = (by: number | null) => (by === null ? null : level - by);
  const filter = behind ? seen.attenuation : 0;
  return {
    carrier: modulatorNull === null || filter === null ? null : level - modulatorNull - filter,
    opposite: behind ? less(seen.suppression1k) : level,
    oppositeWorst: behind ? less(seen.suppressionWorst) : level,
  };
}
