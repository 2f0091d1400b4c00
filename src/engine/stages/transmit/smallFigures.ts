import { dbOfPowerRatio } from '../../quantity/decibel.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import type { TransmitSeen } from './seen.ts';
import { type SmallStage, smallStage } from './smallStages.ts';

/** The small stages in the transmitter's order, each between what really stands beside it. */
export function smallFigures(seen: TransmitSeen) {
  const amplifier = twoWay(seen);
  const first = smallStage(amplifier, seen.modulatorImpedance);
  // Behind the filter, its transformer is wound for the input resistance, so that the source equals it.
  const second = smallStage(amplifier, first.input);
  const receiving = smallStage(amplifier, seen.amplifierLoad);
  const driverStage: SmallStage = {
    device: seen.driverDevice,
    current: seen.driverCurrent,
    emitter: seen.driverEmitter,
    feedback: seen.driverFeedback,
    load: seen.driverLoad,
    frequency: seen.frequency,
    supply: seen.supply,
  };
  // The input resistance doesn't depend on the source: any will do to find it.
  const driverInput = smallStage(driverStage, seen.amplifierLoad).input;
  const driverSource = (second.output * driverInput) / seen.amplifierLoad;
  const driver = smallStage(driverStage, driverSource);
  return {
    first,
    second,
    driver,
    driverSource,
    baseSource: (driver.output * seen.finalInput) / seen.driverLoad,
    /** False where a feedback resistor is so small that the stage no longer amplifies. */
    amplifies: first.voltageGain < 0 && driver.voltageGain < 0,
    results: {
      amplifierGain: dbOfPowerRatio(first.powerGain),
      amplifierInput: first.input,
      amplifierOutput: first.output,
      amplifierNoise: dbOfPowerRatio(receiving.noiseFactor),
      amplifierClip: dbmOfWatts(first.clip),
      driverGain: dbOfPowerRatio(driver.powerGain),
      driverInput,
      driverClip: dbmOfWatts(driver.clip),
    },
  };
}

export type SmallFigures = ReturnType<typeof smallFigures>;

const twoWay = (seen: TransmitSeen): SmallStage => ({
  device: seen.amplifierDevice,
  current: seen.amplifierCurrent,
  emitter: seen.amplifierEmitter,
  feedback: seen.amplifierFeedback,
  load: seen.amplifierLoad,
  frequency: seen.frequency,
  supply: seen.supply,
});
