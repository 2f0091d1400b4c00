import { noiseRise } from '../../circuit/noiseRise.ts';
import { audioChips } from '../../data/devices.ts';
import { noiseFromOutside } from '../../data/noiseClasses.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import {
  dbOfPowerRatio,
  dbOfVoltageRatio,
  powerRatioOfDb,
  voltageRatioOfDb,
} from '../../quantity/decibel.ts';
import { voltsOfDbm } from '../../quantity/power.ts';
import { CHIP_GAIN, comfortableOf, mostAudio, soundOf, worstAudioHeat } from './audio.ts';
import { receiveCautions } from './cautions.ts';
import { receiveFields } from './fields.ts';
import { front } from './front.ts';
import { behindLosses, SIGNAL_FOR_TEN, spareLoss, thermalNoise } from './noise.ts';
import type { ReceiveSeen } from './seen.ts';
import { DB_PER_UNIT, S9, sReports } from './sReports.ts';

/** The receiver from antenna to speaker: noise against the band's, gain, loudness. */
export function workReceive(seen: ReceiveSeen): Work<typeof receiveFields> {
  if (seen.scheme === 'conversion' && seen.bandLoss === null) {
    return { results: noResults(receiveFields), problems: [waitsForBandPass] };
  }
  const noise = workNoise(seen, seen.bandLoss ?? 0);
  const audio = workAudio(seen, noise);
  const results = { ...noise, ...audio };
  return { results, problems: receiveCautions(seen, results) };
}

const waitsForBandPass: Problem = {
  field: 'front.loss',
  weight: 'stops',
  says: 'The receiver waits for the band-pass.',
};

function workNoise(seen: ReceiveSeen, bandLoss: number) {
  const network = seen.throughNetwork === 'yes' ? (seen.networkLoss ?? seen.networkAllowed) : 0;
  const { chain, noiseFigure, floor, frontGain } = front({ ...seen, network, bandLoss });
  const external = noiseFromOutside(seen.place, seen.atmospheric, seen.frequency);
  const bandNoise = thermalNoise(seen.noiseBandwidth) + external;
  const externalHere = behindLosses(external, seen.lineLoss, seen.efficiency ?? 1);
  const bandHere = thermalNoise(seen.noiseBandwidth) + externalHere;
  const margin = bandHere - floor;
  const sensitivity = floor + dbOfPowerRatio(SIGNAL_FOR_TEN);
  const sensitivityVolts = voltsOfDbm(sensitivity, 'Vrms', seen.antenna);
  const weakest = dbOfPowerRatio(
    SIGNAL_FOR_TEN * (powerRatioOfDb(floor) + powerRatioOfDb(bandHere)),
  );
  return {
    chain,
    frontGain,
    noiseFigure,
    floor,
    sensitivity,
    sensitivityVolts,
    sensitivityEmf: 2 * sensitivityVolts,
    external,
    bandNoise,
    externalHere,
    bandHere,
    margin,
    sets: setsLimit(margin),
    noiseRise: noiseRise(externalHere, noiseFigure),
    attenuator: spareLoss(externalHere, noiseFigure),
    weakest,
    weakestUnits: unitsOf(weakest),
  };
}

/** S-units of a level; null below S1, where the scale ends. */
function unitsOf(level: number): number | null {
  const units = 9 + (level - S9) / DB_PER_UNIT;
  return units >= 1 ? units : null;
}

function setsLimit(margin: number): 'band' | 'both' | 'receiver' {
  if (margin >= 10) return 'band';
  return margin > -10 ? 'both' : 'receiver';
}

function workAudio(seen: ReceiveSeen, noise: ReturnType<typeof workNoise>) {
  const { frontGain } = noise;
  const chip = audioChips[seen.chip];
  const audioVoltage = seen.audioSupply ?? Math.min(seen.supply, chip.supply[1]);
  const audioGain = seen.preampGain + dbOfVoltageRatio(CHIP_GAIN[seen.chipGain]);
  const speakerMost = mostAudio(chip, audioVoltage, seen.speaker);
  const comfortable = comfortableOf(seen);
  const wanted = Math.sqrt(comfortable * seen.speaker);
  const powerOf = (detector: number, gain: number) =>
    Math.min((detector * voltageRatioOfDb(gain)) ** 2 / seen.speaker, speakerMost);
  const atDetector = (level: number) =>
    voltsOfDbm(level + frontGain, 'Vrms', seen.detectorImpedance);
  const neededFor = (detector: number) => dbOfVoltageRatio(wanted / detector);
  const station = sReports.find(({ report }) => report.toLowerCase() === seen.setFor);
  const setGain = Math.min(audioGain, neededFor(atDetector(station?.level ?? S9)));
  const loudness = sReports.map(({ report, level }) => {
    const detector = atDetector(level);
    const speaker = powerOf(detector, audioGain);
    return {
      report,
      level,
      antennaVolts: voltsOfDbm(level, 'Vrms', seen.antenna),
      detector,
      speaker,
      needed: neededFor(detector),
      sound: soundOf(seen, speaker),
      soundSet: soundOf(seen, powerOf(detector, setGain)),
    };
  });
  const hiss = atDetector(
    dbOfPowerRatio(powerRatioOfDb(noise.floor) + powerRatioOfDb(noise.bandHere)),
  );
  return {
    detectorVolts: atDetector(S9),
    audioGain,
    gain: frontGain + audioGain + dbOfPowerRatio(seen.detectorImpedance / seen.speaker),
    audioVoltage,
    speakerMost,
    chipHeat: worstAudioHeat(chip, audioVoltage, seen.speaker),
    setGain,
    comfort: soundOf(seen, Math.min(comfortable, speakerMost)),
    loudest: loudness.at(-1)?.soundSet ?? null,
    noiseSound: soundOf(seen, powerOf(hiss, setGain)),
    humAllowed: hiss,
    loudness,
  };
}
