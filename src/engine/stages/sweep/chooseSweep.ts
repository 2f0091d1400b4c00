import { spelled } from '../../quantity/suffix.ts';
import type { FrequencyUnit, SweepColumn, SweepText } from './sweepText.ts';

/** What the person says about the columns; null or `auto` where the guess stands. */
export interface ColumnChoice {
  /** Counted from 1. */
  readonly frequency: number | null;
  readonly level: number | null;
  readonly second: number | null;
  readonly reads: Reads | 'auto';
  readonly unit: FrequencyUnit | 'auto';
}

/** What the value columns are: level in dB, voltage, with or without angle, or two parts. */
export type Reads = 'dB' | 'voltage' | 'dBAngle' | 'voltageAngle' | 'parts';

/** A sweep in SI units, in order of frequency. */
export interface Sweep {
  /** Hz */
  readonly frequency: Float64Array;
  /** 20 log of what is passed, dB; of volts: dB over 1 V. */
  readonly level: Float64Array;
  /** rad; null where the text has none. */
  readonly phase: Float64Array | null;
  /** How the columns were taken: counted from 1. */
  readonly taken: { frequency: number; level: number; second: number | null };
  readonly reads: Reads;
  readonly unit: FrequencyUnit;
  /** Rows out of order, rows without a usable level, rows at the same frequency as another. */
  readonly unsorted: number;
  readonly dropped: number;
  /** One port: the sweep is one minus the reflection, halved. */
  readonly reflection: boolean;
}

/** Takes the sweep out of the columns; null where there is no frequency or no level among them. */
export function chooseSweep(text: SweepText, choice: ColumnChoice): Sweep | null {
  const { columns } = text;
  const at = (wanted: number | null, guess: number) =>
    wanted !== null && wanted >= 1 && wanted <= columns.length ? wanted - 1 : guess;
  const f = at(
    choice.frequency,
    columns.findIndex(({ holds }) => holds === 'frequency'),
  );
  const a = at(choice.level, levelColumn(columns, f));
  const [frequency, level] = [columns[f], columns[a]];
  if (frequency === undefined || level === undefined || f === a) return null;
  const partner = partnerOf(columns, a);
  const guess = readsOf(level, partner === null ? undefined : columns[partner]);
  const reads = choice.reads === 'auto' ? guess : choice.reads;
  const pair = reads === 'dBAngle' || reads === 'voltageAngle' || reads === 'parts';
  const s = pair ? at(choice.second, partner ?? -1) : -1;
  const second = s === a || s === f ? undefined : columns[s];
  if (pair && second === undefined) return null;
  const unit = choice.unit === 'auto' ? unitOf(frequency.unit) : choice.unit;
  const reflection = level.reflection === true;
  if (reflection && !pair) return null;
  const worth = spelled(unit, 'Hz') ?? { power: 0, factor: 1 };
  const volts = spelled(level.unit.replace(/(pp|rms|pk)$/i, ''), 'V');
  const scale = volts === null ? 1 : 10 ** volts.power * volts.factor;

  const points: { f: number; level: number; phase: number }[] = [];
  let dropped = 0;
  for (let i = 0; i < frequency.values.length; i += 1) {
    const at = (frequency.values[i] ?? Number.NaN) * 10 ** worth.power * worth.factor;
    const one = level.values[i] ?? Number.NaN;
    const two = second?.values[i] ?? 0;
    const radian = second !== undefined && /rad/i.test(second.unit) ? 1 : Math.PI / 180;
    const z = parts(reads, one, two * (reads === 'parts' ? 1 : radian), scale);
    const [re, im] = reflection ? [(1 - z[0]) / 2, -z[1] / 2] : z;
    const size = Math.hypot(re, im);
    if (at > 0 && size > 0 && size < 1e6 && at < 1e15) {
      points.push({ f: at, level: 20 * Math.log10(size), phase: Math.atan2(im, re) });
    } else dropped += 1;
  }
  let unsorted = 0;
  const falls = (points[0]?.f ?? 0) > (points.at(-1)?.f ?? 0);
  points.forEach((point, i) => {
    const before = points[i - 1]?.f ?? point.f;
    if (falls ? point.f > before : point.f < before) unsorted += 1;
  });
  points.sort((p, q) => p.f - q.f);
  return {
    frequency: Float64Array.from(points, (p) => p.f),
    level: Float64Array.from(points, (p) => p.level),
    phase: pair ? Float64Array.from(points, (p) => p.phase) : null,
    taken: { frequency: f + 1, level: a + 1, second: second === undefined ? null : s + 1 },
    reads,
    unit,
    unsorted,
    dropped,
    reflection,
  };
}

/** The transmission that was measured, before a reflection; the first level or voltage. */
function levelColumn(columns: readonly SweepColumn[], frequency: number): number {
  const usable = (column: SweepColumn, i: number) =>
    i !== frequency &&
    (column.holds === 'level' || column.holds === 'voltage' || column.holds === 'real');
  const through = columns.findIndex(
    (column, i) => usable(column, i) && column.name.startsWith('S21'),
  );
  if (through >= 0) return through;
  const any = columns.findIndex((c, i) => usable(c, i) && !c.reflection);
  if (any >= 0) return any;
  const back = columns.findIndex(usable);
  return back >= 0 ? back : columns.findIndex((_, i) => i !== frequency);
}

/** The angle or imaginary part that belongs to a column: the next one of that kind. */
function partnerOf(columns: readonly SweepColumn[], level: number): number | null {
  const wanted = columns[level]?.holds === 'real' ? 'imaginary' : 'angle';
  const next = columns[level + 1];
  if (next?.holds === wanted) return level + 1;
  const alone = columns.filter(({ holds }) => holds === wanted);
  return alone.length === 1 ? columns.findIndex(({ holds }) => holds === wanted) : null;
}

function readsOf(level: SweepColumn, partner: SweepColumn | undefined): Reads {
  if (level.holds === 'real' && partner !== undefined) return 'parts';
  if (level.holds === 'voltage') return partner === undefined ? 'voltage' : 'voltageAngle';
  return partner?.holds === 'angle' ? 'dBAngle' : 'dB';
}

function unitOf(text: string): FrequencyUnit {
  const lower = text.toLowerCase();
  return lower === 'khz' ? 'kHz' : lower === 'mhz' ? 'MHz' : lower === 'ghz' ? 'GHz' : 'Hz';
}

/** Real and imaginary part of one row. */
function parts(reads: Reads, one: number, two: number, scale: number): [number, number] {
  if (reads === 'parts') return [one, two];
  const size = reads === 'dB' || reads === 'dBAngle' ? 10 ** (one / 20) : one * scale;
  const angle = reads === 'dB' || reads === 'voltage' ? 0 : two;
  return [size * Math.cos(angle), size * Math.sin(angle)];
}
