import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { workCarrier } from './carrierLeft.ts';
import { transmitFields } from './fields.ts';
import { workFinal } from './final.ts';
import { levelCautions } from './levelCautions.ts';
import { workLevels } from './levels.ts';
import { workModulator } from './modulator.ts';
import type { TransmitSeen } from './seen.ts';
import { smallFigures } from './smallFigures.ts';
import { unwantedRows } from './unwantedRows.ts';

/** The transmitter from microphone to antenna, and the final's currents and heat. */
export function workTransmit(seen: TransmitSeen): Work<typeof transmitFields> {
  const stop = impossible(seen);
  if (stop) return { results: noResults(transmitFields), problems: [stop] };
  const small = smallFigures(seen);
  if (small.stop) return { results: noResults(transmitFields), problems: [small.stop] };
  const { micStanding, followerStanding, amplifierStanding, driverStanding } = small.results;
  const amplifiers = small.third === null ? 2 : 3;
  const others = driverStanding + amplifiers * amplifierStanding + micStanding + followerStanding;
  const final = workFinal({ ...seen, driverStanding });
  const modulator = workModulator(seen);
  const levels = workLevels(seen, small, final.results, modulator.results);
  const carrier = workCarrier(seen, levels.sideband, levels.results.modulatorNull);
  return {
    results: {
      ...modulator.results,
      ...levels.results,
      ...carrier,
      ...small.results,
      unwanted: unwantedRows(seen),
      ...final.results,
      supplyPeak: final.results.dcCurrent + others,
      supplySpeech: final.speechCurrent + others,
    },
    problems: [
      ...small.problems,
      ...final.problems,
      ...modulator.problems,
      ...levels.problems,
      ...levelCautions(
        seen,
        levels,
        carrier,
        modulator.results.modulatorBalance,
        small.results.micStageGain,
      ),
    ],
    origins: {
      amplifierStanding: seen.amplifierCurrent === null ? 'worked' : 'measured',
      modulatorLoss: seen.conversionLoss === null ? 'worked' : 'measured',
      modulatorNull: seen.null === null ? 'worked' : 'measured',
      followerStanding: seen.micCurrent === null ? 'worked' : 'measured',
      micLoad: seen.micInput === null ? 'worked' : 'measured',
      driverStanding: seen.driverCurrent === null ? 'worked' : 'measured',
      limitVce: seen.ownVce === null ? 'typical' : 'typed',
      limitIc: seen.ownIc === null ? 'typical' : 'typed',
      limitJunction: 'typical',
      transition: seen.ownFt === null ? 'typical' : 'typed',
      toCase: seen.ownToCase === null ? 'typical' : 'typed',
      toAmbient: seen.ownToAmbient === null ? 'typical' : 'typed',
    },
  };
}

/** What leaves nothing to work out. */
function impossible(seen: TransmitSeen): Problem | null {
  if (seen.saturation >= seen.supply) {
    return {
      field: 'transmit.saturation',
      weight: 'stops',
      says: 'The final would keep the whole supply voltage for itself.',
      try: 'A higher supply voltage.',
    };
  }
  if (seen.junctionAllowed <= seen.ambient) {
    return {
      field: 'transmit.junctionAllowed',
      weight: 'stops',
      says: 'The junction may not be cooler than the air.',
      try: '125 °C is usual for silicon in air of 35 °C.',
    };
  }
  return null;
}
