import { currentGain } from '../../circuit/currentGain.ts';
import { transistors } from '../../data/devices.ts';
import { rememberBut } from '../../fields/remember.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { finalFigures } from './finalFigures.ts';
import { sanity, standingAdvice } from './finalWords.ts';
import { handCycle } from './handCycle.ts';
import { heat, sinkNeeded, thermalResistance } from './heat.ts';
import { limitRows } from './limitRows.ts';
import { loadFigures } from './loadFigures.ts';
import { overSink } from './overSink.ts';
import { powerCautions } from './powerCautions.ts';
import { powerStage } from './powerStage.ts';
import { saggingFinal } from './saggingFinal.ts';
import { besideFinal, type FinalSeen, type TransmitSeen } from './seen.ts';
import { sinkAdvice } from './sinkAdvice.ts';
import { sinkKind } from './sinkKind.ts';
import { togetherOf } from './together.ts';

/** Final: load, currents, heat, limits. */
export const workFinal = rememberBut<
  TransmitSeen & WithDriver,
  (typeof besideFinal)[number],
  ReturnType<typeof finalOf>
>(besideFinal, finalOf);

interface WithDriver {
  /** The driver’s standing current, A: its heat is among the limits. */
  readonly driverStanding: number;
}

function finalOf(seen: FinalSeen & WithDriver) {
  const final = finalFigures(seen);
  const together = togetherOf(seen);
  const devices = together.sides * together.gang;
  const stage = powerStage({ ...seen, together });
  const { speechCurrent, ...warmth } = heat({ ...seen, ...stage });
  // Several share the heat on their way out; the heat sink is common to all.
  const path = {
    toCase: final.toCase === null ? null : final.toCase / devices,
    toAmbient: final.toAmbient / devices,
    contact: seen.contact / devices,
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
    driverStanding: seen.driverStanding,
    peakCurrent: stage.peakCurrent / together.gang,
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
      outputImpedance:
        together.sides /
        together.gang /
        (2 * Math.PI * final.transition * transistors[seen.finalDevice].cob),
      peakEach: stage.peakCurrent / together.gang,
      dissipationEach: warmth.dissipation / devices,
      ...loadFigures(seen, stage.collectorLoad, together.sides),
      ...saggingFinal(seen, stage.dcCurrent),
      mostOverall: ((Math.PI / 4) * (seen.supply - seen.saturation)) / seen.supply,
      sanity: sanity(stage.overall),
      standingAdvice: standingAdvice(seen, stage, together),
      cycle: handCycle(seen, stage, together),
      overSink: overSink(seen.ambient, warmth, path, seen.sink),
      sinkKind: sinkKind(sinkSpeech, sinkTone),
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
