import type { Problem } from '../../fields/stage.ts';
import { dbOfVoltageRatio } from '../../quantity/decibel.ts';
import { voltsOfDbm } from '../../quantity/power.ts';
import { chainRows, gainsBehindAudio } from './chainRows.ts';
import type { TransmitSeen } from './seen.ts';
import type { SmallFigures } from './smallFigures.ts';

/** Levels along the chain, forward and back. All null while the filter isn't known. */
export function workLevels(
  seen: TransmitSeen,
  small: SmallFigures,
  power: { readonly collectorLoad: number; readonly outputImpedance: number },
) {
  const { ends, endsLoad, filterLoss } = seen;
  if (ends === null || endsLoad === null || filterLoss === null) {
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
    };
    const problem: Problem = {
      field: 'filter.bandwidth',
      weight: 'warns',
      says: 'The levels wait for Filter; the final and its heat don’t.',
    };
    return { results, problems: [problem], sideband: null };
  }
  const behind = gainsBehindAudio(seen, small, filterLoss);
  const fromAudio = behind.reduce((sum, gain) => sum + gain, 0);
  const audioLevel = seen.pepLevel - fromAudio;
  const audioVolts = voltsOfDbm(audioLevel, 'Vrms', seen.modulatorImpedance);
  const micGain = dbOfVoltageRatio(audioVolts / seen.micLevel);
  const over = seen.micFitted === null ? 0 : seen.micFitted - micGain;
  const filterSource = (small.first.output.r * ends) / seen.amplifierLoad;
  const chain = chainRows(seen, small, {
    ...power,
    ends,
    endsLoad,
    filterLoss,
    filterSource,
    micGain: seen.micFitted ?? micGain,
    over,
  });
  const limited = chain.filter((row) => row.headroom !== null);
  const least = (rows: typeof limited) =>
    rows.reduce((a, b) => ((b.headroom ?? 0) < (a.headroom ?? 0) ? b : a));
  const first = least(limited);
  const before = least(limited.filter((row) => row.point !== 'Final, collector'));
  const couplings = (
    [
      ['First amplifier to filter', seen.amplifierLoad, ends],
      ['Filter to second amplifier', endsLoad, small.first.input.r],
      ['Second amplifier to driver', seen.amplifierLoad, small.driver.input.r],
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
      netGain: fromAudio + seen.conversionLoss,
      over,
      first: first.point,
      reserve: before.headroom,
      filterSource,
      couplings,
    },
    problems: [],
    sideband: seen.pepLevel - (fromAudio + seen.conversionLoss),
  };
}

export type Levels = ReturnType<typeof workLevels>;
