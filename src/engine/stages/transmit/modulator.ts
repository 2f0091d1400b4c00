import { carrierLeak } from '../../circuit/modulator/carrierLeak.ts';
import { type DiodePair, diodeSwitch } from '../../circuit/modulator/diodeSwitch.ts';
import { switchDiodes } from '../../data/switchDiodes.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { TransmitSeen } from './seen.ts';

/** The resistance across which the carrier's power is given, Ω. */
export const CARRIER_SOURCE = 50;

/** The diodes as the carrier switches them, and what of it is left. */
export function workModulator(seen: TransmitSeen) {
  const pair = pairOf(seen);
  const on = diodeSwitch(pair);
  if (!on) {
    const problem: Problem = {
      field: 'transmit.carrierDrive',
      weight: 'warns',
      says: `The carrier’s ${format(pair.emf, 'V', 2)} don’t open the diodes, which want ${format(pair.knee, 'V', 2)}.`,
      try: 'More carrier, or diodes with a lower voltage.',
    };
    return { results: { ...nothing, modulatorLoss: seen.conversionLoss }, problems: [problem] };
  }
  const leak = carrierLeak(
    pair,
    on,
    { step: stepOf(seen), mismatch: seen.nullMismatch, capacitance: seen.nullCapacitance },
    2 * Math.PI * (seen.carrierFrequency ?? seen.frequency),
  );
  const beyond = leak.fromDiodes > leak.reach + leak.fromStep;
  const problems: Problem[] = beyond
    ? [
        {
          field: 'transmit.nullTrimmer',
          weight: 'warns',
          says: `The trimmer takes out ${format(leak.mismatchReach, 'V', 2)} of the diodes’ ${format(seen.nullMismatch, 'V', 2)}.`,
          try: 'Diodes nearer alike, or a larger trimmer.',
        },
      ]
    : [];
  return {
    results: {
      modulatorKnee: on.knee,
      modulatorOn: on.on,
      modulatorIdeal: on.ideal,
      modulatorLoss:
        seen.conversionLoss ?? on.ideal + on.deadLoss + on.onLoss + seen.modulatorWinding,
      nullInPhase: leak.inPhase,
      nullQuadrature: leak.quadrature,
      nullReach: leak.mismatchReach,
      modulatorBalance: leak.power > 0 ? leak.balance : null,
    },
    problems,
  };
}

export type Modulator = ReturnType<typeof workModulator>;

const nothing = {
  modulatorKnee: null,
  modulatorOn: null,
  modulatorIdeal: null,
  modulatorLoss: null,
  nullInPhase: null,
  nullQuadrature: null,
  nullReach: null,
  modulatorBalance: null,
};

/** How far from the null the trimmer is left, as a share of its track. */
const stepOf = ({ nullSetting, nullTurns }: TransmitSeen): number =>
  Math.min(1, nullSetting / (2 * Math.PI * nullTurns));

const pairOf = (seen: TransmitSeen): DiodePair => {
  const { knee, emission, bulk } = switchDiodes[seen.modulatorDiode];
  return {
    action: seen.modulatorAction,
    emf: Math.sqrt(8 * CARRIER_SOURCE * seen.carrierDrive),
    source: CARRIER_SOURCE,
    trimmer: seen.nullTrimmer,
    knee,
    emission,
    bulk,
    impedance: seen.modulatorImpedance,
  };
};
