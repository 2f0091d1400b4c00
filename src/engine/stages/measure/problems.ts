import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { holderOf, type Readings } from './readings.ts';
import type { MeasureSeen } from './seen.ts';
import type { Found, Misfit } from './solve.ts';

const at = (field: string) => `measure.${field}`;
const pF = (value: number) => format(value, 'F', 3);

/** A holder that comes out at nothing or less. */
export function holderProblem(seen: MeasureSeen): Problem | null {
  const c0 = holderOf(seen);
  if (c0 === null || c0 > 0) return null;
  return {
    field: at('meterStray'),
    weight: 'stops',
    says: `${pF(seen.meterStray ?? 0)} without the crystal leaves nothing of the ${pF(seen.c0Read ?? 0)} with it.`,
    try: 'The first is the meter’s reading with the crystal taken out.',
  };
}

/** Readings that no crystal gives, in words. */
export function misfit(seen: MeasureSeen, readings: Readings, what: Misfit): Problem {
  const stops = (field: string, says: string, help: string): Problem => ({
    field: at(field),
    weight: 'stops',
    says,
    try: help,
  });
  const c0 = 'c0' in readings ? readings.c0 : 0;
  if (what === 'loss' && readings.by === 'fixture' && readings.loss <= 0) {
    return stops(
      'peakLoss',
      'No loss at the peak would mean a crystal without resistance.',
      'Set 0 dB with a short circuit in the crystal’s place, then put the crystal in.',
    );
  }
  if (what === 'loss' || what === 'drop') {
    return stops(
      what === 'loss' ? 'peakLoss' : 'c0Read',
      `${pF(c0)} across the crystal let more past than ${what === 'loss' ? 'such a loss' : '3 dB under such a peak'} allows.`,
      'A jig of lower resistance shows the peak more clearly. Check the loss and C0.',
    );
  }
  if (what === 'order' && readings.by === 'shift') {
    const { first, second, firstSeries, secondSeries } = readings;
    if (firstSeries === secondSeries) {
      return stops(
        'secondSeries',
        'Both readings were taken with the same capacitor: there is no shift to work with.',
        'Take the second through 22 to 33 pF.',
      );
    }
    const direction = second - first > 0 ? 'raised' : 'lowered';
    return stops(
      'second',
      `The second capacitor ${direction} the frequency by ${format(Math.abs(second - first), 'Hz', 3)}; the smaller capacitor must give the higher frequency.`,
      'The two readings may have been swapped.',
    );
  }
  if (what === 'third') {
    return stops(
      'third',
      'No capacitance of the oscillator makes these three readings agree.',
      'The third must lie below the first. Check the capacitors, and let the crystal cool after soldering.',
    );
  }
  if (what === 'load') {
    return stops(
      seen.oscillatorBy === 'typed' ? 'oscillatorOwn' : 'second',
      'So large a shift contradicts the capacitances: Cm would outweigh C0.',
      'Check the units of the capacitors (pF) and the oscillator’s own capacitance.',
    );
  }
  const [fs, fp] = readings.by === 'pair' ? [readings.series, readings.parallel] : [0, 0];
  return stops(
    'parallel',
    `The dip (${format(fp, 'Hz', 8)}) must lie above the peak (${format(fs, 'Hz', 8)}).`,
    'The two may have been swapped.',
  );
}

/** A crystal that comes out unlike quartz, by the name of the reading most likely to be wrong. */
export function unlike(readings: Readings, found: Found): Problem | null {
  const { cm, qu, rm } = found;
  const ratio = cm / readings.c0;
  if (ratio > 0.01) {
    const field =
      readings.by === 'fixture' ? 'width' : readings.by === 'shift' ? 'second' : 'parallel';
    const why =
      readings.by === 'fixture'
        ? `A peak ${format(readings.width, 'Hz', 3)} wide between ${format(readings.end, 'Ω', 3)} makes`
        : readings.by === 'shift'
          ? `This shift with ${pF(found.oscillator ?? 0)} in the oscillator makes`
          : 'Resonances so far apart make';
    return {
      field: at(field),
      weight: 'stops',
      says: `${why} Cm 1/${format(1 / ratio, '1', 2)} of C0; quartz stays below 1/100.`,
      try: 'Check the units, and whether the dip or peak belongs to this mode of the crystal.',
    };
  }
  if (qu !== null && rm !== null && (qu > 5e6 || qu < 500)) {
    const high = qu > 5e6;
    return {
      field: at(high ? 'width' : 'peakLoss'),
      weight: 'stops',
      says: `Width and loss together make Qu ${format(qu, '1', 3)}; quartz has ${high ? 'at most some millions' : 'thousands at least'}.`,
      try: high
        ? 'So narrow a peak with so little loss does not go with this resistance of the jig. Check the width, or set 0 dB anew.'
        : 'The loss counts against a short circuit in the crystal’s place.',
    };
  }
  return null;
}

/** What is possible, but to be watched. */
export function cautions(seen: MeasureSeen, readings: Readings, found: Found): Problem[] {
  const problems: Problem[] = [];
  const warn = (field: string, says: string, help: string) =>
    problems.push({ field: at(field), weight: 'warns', says, try: help });
  const { qu, cm } = found;
  if (cm / readings.c0 < 1 / 2500) {
    warn(
      readings.by === 'fixture' ? 'width' : readings.by === 'shift' ? 'second' : 'parallel',
      `Cm would be 1/${format(readings.c0 / cm, '1', 2)} of C0, little for a fundamental crystal.`,
      'An overtone has so little; else check the readings.',
    );
  }
  if (qu !== null && qu < 10_000) {
    warn(
      'peakLoss',
      `Qu ${format(qu, '1', 3)} is poor for a crystal.`,
      'Is the loss counted against a short circuit, and the jig’s resistance right?',
    );
  }
  if (readings.by === 'shift' && readings.third === null && seen.oscillatorBy === 'typed') {
    const own = readings.oscillator ?? 0;
    if (own < 10e-12) {
      warn(
        'oscillatorOwn',
        `${pF(own)} is little for an oscillator.`,
        'Its feedback capacitors in series, transistor and wiring belong to it.',
      );
    }
  }
  return problems;
}

/** No ± can be given: one of the readings is nearly out of the possible. */
export const nearLimit = (readings: Readings): Problem => ({
  field: at(
    readings.by === 'fixture' ? 'peakLoss' : readings.by === 'shift' ? 'second' : 'parallel',
  ),
  weight: 'warns',
  says: 'The readings lie so near to what is impossible that no ± can be given.',
  try: 'Take them again with smaller errors, or see whether an error given is too large.',
});
