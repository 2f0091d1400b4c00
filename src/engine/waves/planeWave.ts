import { faddeeva } from './faddeeva.ts';
import type { Surface } from './surface.ts';

/**
 * Attenuation of a ground wave by Norton's surface wave over a plane, the earth's bend as a first
 * correction.
 *
 * F = 1 + i√(πp)·w(√p), p = ikdΔ²/2; then F − (δ³/2)·[1 + i√(πp) − (1 + 2p)F], δ³ = −i/(k·a·Δ³).
 * Holds while the bend matters little: m·d/a below about 0.3.
 *
 * @param surface what the wave runs along
 * @param distance m
 * @returns field over twice that of free space, plain ratio
 * Source: Norton, Proc. IRE 24, 1936 and 25, 1937; Wait, J. Res. NBS 56, 1956 (small curvature).
 */
export function planeWave({ k, re, im, radius }: Surface, distance: number): number {
  // p and its root; both lie in the upper half plane.
  const half = (k * distance) / 2;
  const pr = -half * 2 * re * im;
  const pi = half * (re * re - im * im);
  const size = Math.hypot(pr, pi);
  const sr = Math.sqrt((size + pr) / 2);
  const si = Math.sqrt((size - pr) / 2);
  const w = new Float64Array(2);
  faddeeva(sr, si, w);
  const [wr = 0, wi = 0] = w;
  const root = Math.sqrt(Math.PI);
  const fr = 1 - root * (sr * wi + si * wr);
  const fi = root * (sr * wr - si * wi);
  // The bracket, and Δ³.
  const br = 1 - root * si - ((1 + 2 * pr) * fr - 2 * pi * fi);
  const bi = root * sr - ((1 + 2 * pr) * fi + 2 * pi * fr);
  const cr = re * (re * re - 3 * im * im);
  const ci = im * (3 * re * re - im * im);
  const scale = 1 / (2 * k * radius * (cr * cr + ci * ci));
  // δ³/2 = −i/(2ka)·conj(Δ³)/|Δ³|²
  const dr = -scale * ci;
  const di = -scale * cr;
  return Math.hypot(fr - (dr * br - di * bi), fi - (dr * bi + di * br));
}
