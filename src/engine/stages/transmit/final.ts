import { currentGain } from '../../circuit/feedbackAmplifier.ts';
import { transistors } from '../../data/devices.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { finalFigures } from './finalFigures.ts';
import { heat, sinkNeeded, thermalResistance } from './heat.ts';
import { limitRows } from './limitRows.ts';
import { powerCautions } from './powerCautions.ts';
import { powerStage } from './powerStage.ts';
import type { TransmitSeen } from './seen.ts';
import { sinkAdvice } from './sinkAdvice.ts';

/**
 * Final: load, currents, heat, limits.
 *
 * @param driverStanding the driver’s standing current, A: its heat is among the limits
 */
export function workFinal(seen: TransmitSeen, driverStanding: number) {
  const final = finalFigures(seen);
  const stage = powerStage(seen);
  const { speechCurrent, ...warmth } = heat({ ...seen, ...stage });
  const path = {
    ...final,
    contact: seen.contact,
    sink: seen.cooling === 'sink' ? seen.sink : null,
  };
  const resistance = thermalResistance(path);
  const junction = seen.ambient + warmth.dissipationSpeech * resistance;
  const junctionTone = seen.ambient + warmth.dissipationTone * resistance;
  const room = seen.junctionAllowed - seen.ambient;
  const sinkSpeech = sinkNeeded(warmth.dissipationSpeech, room, path);
  const sinkTone = sinkNeeded(warmth.dissipationTone, room, path);
  const currentGainAsked = Math.sqrt(
    (powerRatioOfDb(seen.finalGain) * seen.finalInput) / stage.collectorLoad,
  );
  const hfe = transistors[seen.finalDevice].hfe[1];
  const currentGainThere = currentGain(hfe, final.transition, seen.frequency);
  const limits = limitRows(seen, final, {
    driverStanding,
    peakCurrent: stage.peakCurrent,
    junction,
    junctionTone,
    currentGainAsked,
    currentGainThere,
  });
  return {
    speechCurrent,
    results: {
      ...final,
      ...stage,
      ...warmth,
      twoToneMean: seen.pep / 2,
      outputImpedance: 1 / (2 * Math.PI * final.transition * transistors[seen.finalDevice].cob),
      currentGainAsked,
      currentGainThere,
      junction,
      junctionTone,
      sinkSpeech: sinkSpeech !== null && sinkSpeech > 0 ? sinkSpeech : null,
      sinkTone: sinkTone !== null && sinkTone > 0 ? sinkTone : null,
      sinkAdvice: sinkAdvice(sinkSpeech, sinkTone, final.toCase),
      limits,
    },
    problems: powerCautions(seen, final, stage, limits),
  };
}
