import type { Problem } from '../../fields/stage.ts';
import { dbOfVoltageRatio, voltageRatioOfDb } from '../../quantity/decibel.ts';
import { dbmOfWatts, voltsOfDbm, wattsOfDbm } from '../../quantity/power.ts';
import { chainRows, gainFromAudio, gainsBehindAudio } from './chainRows.ts';
import type { Modulator } from './modulator.ts';
import type { TransmitSeen } from './seen.ts';
import type { SmallFigures } from './smallFigures.ts';

/** Levels along the chain, forward and back. All null while the filter isn't known. */
export function workLevels(
  seen: TransmitSeen,
  small: SmallFigures,
  power: { readonly collectorLoad: number; readonly outputImpedance: number },
  modulator: Modulator['results'],
) {
  const { ends, endsLoad, filterLoss } = seen;
  const { modulatorLoss, modulatorBalance } = modulator;
  const waits = seen.scheme === 'conversion' && seen.frontLoss === null;
  if (
    ends === null ||
    endsLoad === null ||
    filterLoss === null ||
    modulatorLoss === null ||
    waits
  ) {
    const results = {
      chain: null,
      micGain: null,
      audioLevel: null,
      audioVolts: null,
      netGain: null,
      over: null,
      first: null,
      reserve: null,
      filterSource: null,
      couplings: null,
      modulatorMargin: null,
      modulatorNull: seen.null,
      volumeDown: null,
      builtPower: null,
      builtFirst: null,
      builtFirstAt: null,
    };
    const lacks = filterLoss === null || !waits;
    const problem: Problem = {
      field: lacks ? 'filter.bandwidth' : 'front.widthGiven',
      weight: 'warns',
      says: `The levels wait for ${lacks ? 'Filter' : 'Band-pass'}; the final and its heat don’t.`,
    };
    return { results, problems: modulatorLoss === null ? [] : [problem], sideband: null };
  }
  const rig = { filterLoss, modulatorLoss, frontLoss: seen.frontLoss ?? 0 };
  const fromAudio = gainFromAudio(seen, gainsBehindAudio(seen, small, rig));
  const audioLevel = seen.pepLevel - fromAudio;
  const audioVolts = voltsOfDbm(audioLevel, 'Vrms', seen.modulatorImpedance);
  const micGain = dbOfVoltageRatio(audioVolts / seen.micLevel);
  const over = seen.micFitted === null ? 0 : seen.micFitted - micGain;
  const sideband = audioLevel - modulatorLoss;
  const carrier = dbmOfWatts(seen.carrierDrive);
  const modulatorNull =
    seen.null ?? (modulatorBalance === null ? null : sideband - (carrier - modulatorBalance));
  const volumeDown = (seen.micFitted ?? small.results.micStageGain) - micGain;
  const builtUp = seen.micFitted === null ? volumeDown : 0;
  const filterSource = (small.first.output.r * ends) / seen.amplifierLoad;
  const chain = chainRows(seen, small, {
    ...power,
    ...rig,
    ends,
    endsLoad,
    modulatorNull,
    builtUp,
    filterSource,
    micGain: seen.micFitted ?? micGain,
    over,
  });
  const limited = chain.filter((row) => row.headroom !== null);
  const least = (rows: typeof limited) =>
    rows.reduce((a, b) => ((b.headroom ?? 0) < (a.headroom ?? 0) ? b : a));
  const first = least(limited);
  const before = least(limited.filter((row) => row.point !== 'Final, collector'));
  const soonest = least(limited.map((row) => ({ ...row, headroom: builtHeadroom(row, builtUp) })));
  const couplings = (
    [
      ['First amplifier to filter', seen.amplifierLoad, ends],
      ['Filter to second amplifier', endsLoad, small.first.input.r],
      ...toDriver(seen, small),
      ['Driver to final', seen.driverLoad, seen.finalInput],
    ] as const
  ).map(([place, collector, following]) => ({
    place,
    collector,
    following,
    turns: Math.sqrt(collector / following),
  }));
  return {
    results: {
      chain,
      micGain,
      audioLevel,
      audioVolts,
      netGain: fromAudio + modulatorLoss,
      over,
      first: first.point,
      reserve: before.headroom,
      filterSource,
      couplings,
      modulatorMargin: carrier - audioLevel,
      modulatorNull,
      volumeDown,
      builtPower: wattsOfDbm(chain.at(-1)?.forward ?? Number.NaN),
      builtFirst: soonest.point,
      builtFirstAt: seen.micLevel * voltageRatioOfDb(soonest.headroom ?? 0),
    },
    problems: [],
    sideband,
  };
}

/** What stands between the second amplifier and the driver. */
function toDriver(
  seen: TransmitSeen,
  { third, driver }: SmallFigures,
): readonly (readonly [string, number, number])[] {
  const { amplifierLoad, frontEnd } = seen;
  if (seen.scheme !== 'conversion') {
    return [['Second amplifier to driver', amplifierLoad, driver.input.r]];
  }
  const toMixer = ['Second amplifier to mixer', amplifierLoad, frontEnd] as const;
  if (third === null) return [toMixer, ['Band-pass to driver', frontEnd, driver.input.r]];
  return [
    toMixer,
    ['Band-pass to third amplifier', frontEnd, third.input.r],
    ['Third amplifier to driver', amplifierLoad, driver.input.r],
  ];
}

/** Headroom with the volume full up: the first transistor stands before it. */
export const builtHeadroom = (
  { point, headroom }: { readonly point: string | null; readonly headroom: number | null },
  builtUp: number,
): number => (headroom ?? 0) - (point === 'Microphone amplifier, collector' ? 0 : builtUp);

export type Levels = ReturnType<typeof workLevels>;
