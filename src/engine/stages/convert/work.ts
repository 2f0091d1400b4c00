import {
  halfwayOf,
  imageOf,
  mixed,
  oscillatorFor,
  type Way,
  wayOf,
  waySays,
} from '../../circuit/mixing.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { convertFields } from './fields.ts';
import type { ConvertSeen } from './seen.ts';

/** Tones of the voice that are sent through, Hz. */
const TONES = [300, 1000, 2700] as const;

/** Off the plan by more than this and another station's channel is met, Hz. */
const BESIDE = 50;

/** The conversion oscillator, and what its mixer makes of the filter's sideband. */
export function workConvert(seen: ConvertSeen): Work<typeof convertFields> {
  const { scheme, side, nominal, filterFrequency, carrier, made } = seen;
  if (scheme !== 'conversion' || nominal === null || filterFrequency === null) {
    return { results: noResults(convertFields), problems: [] };
  }
  if (carrier === null || made === null) {
    return { results: noResults(convertFields), problems: [] };
  }
  const way = wayOf(side, nominal, filterFrequency);
  const worked = oscillatorFor(way, nominal, carrier);
  const oscillator = seen.oscillatorGiven ?? worked;
  const lands = mixed(way, oscillator, carrier);
  if (oscillator <= 0 || lands <= 0) {
    return { results: noResults(convertFields), problems: [nowhere(seen, worked)] };
  }
  const tones = TONES.map((tone) => toneRow(tone, way, oscillator, carrier, made));
  const comesOut = tones[1]?.side ?? null;
  const level = seen.signalLevel - seen.mixerLoss;
  return {
    results: {
      oscillator,
      oscillatorTop: way === 'takes' ? oscillator - seen.span : oscillator + seen.span,
      lands,
      off: lands - nominal,
      sum: waySays[way],
      comesOut,
      tones,
      image: imageOf(way, oscillator, carrier),
      halfway: halfwayOf(way, oscillator, carrier),
      carrierLeft: seen.signalLevel - seen.signalIsolation - level,
      oscillatorLeft: seen.oscillatorLevel - seen.oscillatorIsolation - level,
    },
    problems: problems(seen, { way, oscillator, worked, lands, nominal, comesOut }),
    origins: { oscillator: seen.oscillatorGiven === null ? 'worked' : 'typed' },
  };
}

function toneRow(
  tone: number,
  way: Way,
  oscillator: number,
  carrier: number,
  made: 'lower' | 'upper',
) {
  const passed = made === 'lower' ? carrier - tone : carrier + tone;
  const added = oscillator + passed;
  const subtracted = Math.abs(oscillator - passed);
  const kept = way === 'adds' ? added : subtracted;
  const beside = kept - mixed(way, oscillator, carrier);
  return {
    tone,
    passed,
    added,
    subtracted,
    kept,
    beside,
    side: (beside < 0 ? 'lower' : 'upper') as 'lower' | 'upper',
  };
}

interface Found {
  readonly way: Way;
  readonly oscillator: number;
  readonly worked: number;
  readonly lands: number;
  readonly nominal: number;
  readonly comesOut: 'lower' | 'upper' | null;
}

function nowhere({ side }: ConvertSeen, worked: number): Problem {
  return worked > 0
    ? {
        field: 'convert.oscillatorGiven',
        weight: 'stops',
        says: `With this oscillator the ${side} of the two frequencies never reaches the band.`,
        try: `${format(worked, 'Hz', 7)} would.`,
      }
    : {
        field: 'plan.side',
        weight: 'stops',
        says: 'Operating frequency and carrier are so near to each other that no oscillator is left between them.',
        try: 'The sum of the two frequencies, or crystals of another frequency.',
      };
}

function problems(seen: ConvertSeen, found: Found): Problem[] {
  const out: Problem[] = [];
  const { lands, nominal, worked, comesOut, way, oscillator } = found;
  if (Math.abs(lands - nominal) > BESIDE) {
    out.push({
      field: 'convert.oscillatorGiven',
      weight: 'warns',
      says: `This oscillator puts the suppressed carrier at ${format(lands, 'Hz', 7)}, ${format(Math.abs(lands - nominal), 'Hz', 3)} beside the plan.`,
      try: `${format(worked, 'Hz', 8)} meets it; or plan for where it lands.`,
    });
  }
  if (comesOut !== null && comesOut !== seen.sideband) {
    out.push({
      field: 'plan.sideband',
      weight: 'warns',
      says: 'The other sideband than the one planned comes out.',
      try: 'The carrier on the other side of the filter, or the conversion oscillator at the other of sum and difference.',
    });
  }
  const top = way === 'takes' ? oscillator - seen.span : oscillator + seen.span;
  if (top <= 100e3) {
    out.push({
      field: 'convert.span',
      weight: 'warns',
      says: 'The oscillator would have to go down to next to nothing at the end of the range.',
      try: 'A smaller range, or the sum of the two frequencies.',
    });
  }
  if (seen.signalLevel > seen.oscillatorLevel - 10) {
    out.push({
      field: 'convert.signalLevel',
      weight: 'warns',
      says: `The signal comes within ${format(seen.oscillatorLevel - seen.signalLevel, 'dB', 1)} of the oscillator: the voice switches the diodes too, and splatters.`,
      try: 'Ten decibels between them, twenty are better; or a mixer of a higher level class.',
    });
  }
  return out;
}
