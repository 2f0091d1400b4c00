import type { RandomSource } from '../audio/randomSource.ts';
import { consonants, type Phone, vowels } from './phones.ts';

/** Steps a second of everything that mouth and throat do. */
export const STEPS = 200;

/** What mouth and throat do over time, a value for each step. */
export interface Utterance {
  readonly pitch: Float64Array;
  readonly formants: readonly [Float64Array, Float64Array, Float64Array];
  readonly voice: Float64Array;
  readonly breath: Float64Array;
  readonly hiss: Float64Array;
  readonly hissAt: Float64Array;
  readonly hissWidth: Float64Array;
}

/** How far movements are rounded off, steps to either side. */
const SLUR = 5;
const ONSET = 1;

/**
 * Syllables without a meaning in phrases with a falling tune and pauses between.
 *
 * @param seconds how long
 * @param pitch about which the tune moves, Hz
 */
export function utterance(seconds: number, pitch: number, random: RandomSource): Utterance {
  const count = Math.ceil(seconds * STEPS) + 1;
  const track = () => new Float64Array(count);
  const out = {
    pitch: track(),
    formants: [track(), track(), track()] as const,
    voice: track(),
    breath: track(),
    hiss: track(),
    hissAt: track(),
    hissWidth: track(),
  };
  let at = 0;
  while (at < count) at = phrase(out, at, pitch, random);
  for (const of of out.formants) smooth(of, SLUR);
  smooth(out.pitch, 2 * SLUR);
  for (const of of [out.voice, out.breath, out.hiss]) smooth(of, ONSET);
  return out;
}

const pick = <T>(of: readonly T[], { even }: RandomSource): T => of[(even() * of.length) | 0] as T;

/** One phrase and the pause after it; gives the step behind it. */
function phrase(out: Utterance, from: number, pitch: number, random: RandomSource): number {
  const syllables = 4 + ((random.even() * 6) | 0);
  let at = from;
  for (let i = 0; i < syllables; i += 1) {
    const stressed = i % 2 === 0 || random.even() < 0.25;
    const tune = pitch * (1.18 - (0.36 * i) / syllables) * (stressed ? 1.08 : 0.97);
    const strength = (stressed ? 1 : 0.6) * (1 - (0.35 * i) / syllables);
    for (const phone of pick(consonants, random)) at = say(out, at, phone, tune, strength, 1);
    at = say(out, at, pick(vowels, random), tune, strength, stressed ? 1.15 : 0.75);
    // Two syllables of five are closed.
    if (random.even() < 0.4) {
      for (const phone of pick(consonants, random)) at = say(out, at, phone, tune, strength, 0.8);
    }
  }
  const pause = 0.18 + 0.3 * random.even();
  const rest: Phone = {
    formants: [500, 1500, 2500],
    voice: 0,
    breath: 0,
    hiss: 0,
    hissAt: 4000,
    hissWidth: 2000,
    length: pause,
  };
  return say(out, at, rest, 0.8 * pitch, 0, 1);
}

/** Writes one sound; gives the step behind it. */
function say(
  out: Utterance,
  from: number,
  phone: Phone,
  pitch: number,
  strength: number,
  stretch: number,
): number {
  const to = from + Math.max(1, Math.round(phone.length * stretch * STEPS));
  for (let i = from; i < Math.min(to, out.pitch.length); i += 1) {
    out.pitch[i] = pitch;
    out.formants.forEach((of, n) => {
      of[i] = phone.formants[n] as number;
    });
    out.voice[i] = phone.voice * strength;
    out.breath[i] = phone.breath * strength;
    out.hiss[i] = phone.hiss * strength;
    out.hissAt[i] = phone.hissAt;
    out.hissWidth[i] = phone.hissWidth;
  }
  return to;
}

/** Rounds off corners: the mean over so many steps to either side. */
function smooth(of: Float64Array, reach: number): void {
  const before = of.slice();
  const last = of.length - 1;
  for (let i = 0; i <= last; i += 1) {
    let sum = 0;
    for (let k = -reach; k <= reach; k += 1) {
      sum += before[Math.min(last, Math.max(0, i + k))] as number;
    }
    of[i] = sum / (2 * reach + 1);
  }
}
