import { audioChips } from '../../data/devices.ts';
import { noiseFromOutside } from '../../data/noiseClasses.ts';
import type { Work } from '../../fields/stage.ts';
import {
  dbOfPowerRatio,
  dbOfVoltageRatio,
  powerRatioOfDb,
  voltageRatioOfDb,
} from '../../quantity/decibel.ts';
import { voltsOfDbm } from '../../quantity/power.ts';
import { CHIP_GAIN, mostAudio, worstAudioHeat } from './audio.ts';
import { receiveCautions } from './cautions.ts';
import type { receiveFields } from './fields.ts';
import { front } from './front.ts';
import { noiseRise, SIGNAL_FOR_TEN, spareLoss, thermalNoise } from './noise.ts';
import type { ReceiveSeen } from './seen.ts';
import { DB_PER_UNIT, S9, sReports } from './sReports.ts';

/** The receiver from antenna to speaker: noise against the band's, gain, loudness. */
export function workReceive(seen: ReceiveSeen): Work<typeof receiveFields> {
  const noise = workNoise(seen);
  const audio = workAudio(seen, noise.frontGain);
  const results = { ...noise, ...audio };
  return { results, problems: receiveCautions(seen, results) };
}

function workNoise(seen: ReceiveSeen) {
  const network = seen.throughNetwork === 'yes' ? (seen.networkLoss ?? seen.networkAllowed) : 0;
  const { chain, noiseFigure, floor, frontGain } = front({ ...seen, network });
  const external = noiseFromOutside(seen.place, seen.atmospheric, seen.frequency);
  const bandNoise = thermalNoise(seen.noiseBandwidth) + external;
  const margin = bandNoise - floor;
  const sensitivity = floor + dbOfPowerRatio(SIGNAL_FOR_TEN);
  const sensitivityVolts = voltsOfDbm(sensitivity, 'Vrms', seen.antenna);
  const weakest = dbOfPowerRatio(
    SIGNAL_FOR_TEN * (powerRatioOfDb(floor) + powerRatioOfDb(bandNoise)),
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
    margin,
    sets: setsLimit(margin),
    noiseRise: noiseRise(external, noiseFigure),
    attenuator: spareLoss(external, noiseFigure),
    weakest,
    weakestUnits: 9 + (weakest - S9) / DB_PER_UNIT,
  };
}

function setsLimit(margin: number): 'band' | 'both' | 'receiver' {
  if (margin >= 10) return 'band';
  return margin > -10 ? 'both' : 'receiver';
}

function workAudio(seen: ReceiveSeen, frontGain: number) {
  const chip = audioChips[seen.chip];
  const audioVoltage = seen.audioSupply ?? Math.min(seen.supply, chip.supply[1]);
  const audioGain = seen.preampGain + dbOfVoltageRatio(CHIP_GAIN[seen.chipGain]);
  const speakerMost = mostAudio(chip, audioVoltage, seen.speaker);
  const wanted = Math.sqrt(seen.listening * seen.speaker);
  const loudness = sReports.map(({ report, level }) => {
    const detector = voltsOfDbm(level + frontGain, 'Vrms', seen.detectorImpedance);
    const unlimited = (detector * voltageRatioOfDb(audioGain)) ** 2 / seen.speaker;
    return {
      report,
      level,
      antennaVolts: voltsOfDbm(level, 'Vrms', seen.antenna),
      detector,
      speaker: Math.min(unlimited, speakerMost),
      needed: dbOfVoltageRatio(wanted / detector),
    };
  });
  return {
    detectorVolts: voltsOfDbm(S9 + frontGain, 'Vrms', seen.detectorImpedance),
    audioGain,
    gain: frontGain + audioGain + dbOfPowerRatio(seen.detectorImpedance / seen.speaker),
    audioVoltage,
    speakerMost,
    chipHeat: worstAudioHeat(chip, audioVoltage, seen.speaker),
    loudness,
  };
}
