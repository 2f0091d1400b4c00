import { bentModes } from './bentModes.ts';
import type { Surface } from './surface.ts';

/** Modes that are added up; at m·d/a = 0.2 the last is down by e⁻⁵⁰. */
export const MODES = 100;

/**
 * Attenuation of a ground wave round the bent earth, as a sum of creeping modes.
 *
 * W = e^(iπ/4)·√(πx)·Σ e^(i·x·t)/(t − q²) with x = m·d/a and q = i·m·Δ. Holds beyond x = 0.1.
 *
 * @param surface what the wave runs along
 * @param modes roots from `modesOf`
 * @param distance m
 * @returns field over twice that of free space, plain ratio
 * Source: Fock, 1965; Bremmer, Terrestrial Radio Waves, 1949; the method of ITU-R P.368's curves.
 */
export function bentWave(surface: Surface, modes: Float64Array, distance: number): number {
  const x = (surface.m * distance) / surface.radius;
  const [qr, qi] = bendOf(surface);
  const vr = qr * qr - qi * qi;
  const vi = 2 * qr * qi;
  let re = 0;
  let im = 0;
  for (let s = 0; s + 1 < modes.length; s += 2) {
    const tr = modes[s] ?? 0;
    const ti = modes[s + 1] ?? 0;
    const size = Math.exp(-x * ti);
    if (size < 1e-16) break;
    const er = size * Math.cos(x * tr);
    const ei = size * Math.sin(x * tr);
    const dr = tr - vr;
    const di = ti - vi;
    const whole = dr * dr + di * di;
    re += (er * dr + ei * di) / whole;
    im += (ei * dr - er * di) / whole;
  }
  return Math.sqrt(Math.PI * x) * Math.hypot(re, im);
}

/** The modes of a surface: real and imaginary parts of t in turn. */
export function modesOf(surface: Surface): Float64Array {
  const modes = new Float64Array(2 * MODES);
  bentModes(...bendOf(surface), modes);
  return modes;
}

/** q = i·m·Δ. */
const bendOf = ({ m, re, im }: Surface): readonly [number, number] => [-m * im, m * re];
