import { chooseSweep, type Sweep } from './chooseSweep.ts';
import { readSweepText } from './readSweepText.ts';
import type { SweepSeen } from './seen.ts';
import type { SweepText } from './sweepText.ts';

/** A pasted sweep as it was understood. */
export interface Understood {
  readonly text: SweepText;
  /** Null where there is no frequency or no level in it. */
  readonly sweep: Sweep | null;
  /** Level against a wire, dB, at each row of the sweep. */
  readonly level: Float64Array;
  /** The level column is volts, and those with a wire are not known. */
  readonly loose: boolean;
  /** Ω */
  readonly resistance: number;
}

/** Resistance where neither file nor person says one, Ω. */
export const USUAL_RESISTANCE = 50;

/** Reads the text and puts its level against what a wire would pass. */
export function understand(seen: SweepSeen & { file: string }): Understood {
  const text = readSweepText(seen.file);
  const sweep = chooseSweep(text, {
    frequency: seen.columnFrequency,
    level: seen.columnLevel,
    second: seen.columnSecond,
    reads: seen.columnsAre,
    unit: seen.unit,
  });
  // One port: what comes back was made what a fixture of half the resistance passes.
  const reference = text.reference ?? USUAL_RESISTANCE;
  const resistance = seen.rt ?? (sweep?.reflection ? reference / 2 : reference);
  const volts = sweep !== null && isVolts(text, sweep);
  const loose = volts && seen.throughVolts === null;
  const wire = volts ? 20 * Math.log10(seen.throughVolts ?? 1) : seen.through;
  const level = sweep === null ? new Float64Array() : sweep.level.map((x) => x - wire);
  return { text, sweep, level, loose, resistance };
}

/** A plain ratio has no unit; volts have. */
const isVolts = (text: SweepText, { reads, taken }: Sweep): boolean =>
  (reads === 'voltage' || reads === 'voltageAngle') &&
  /v/i.test(text.columns[taken.level - 1]?.unit ?? '');
