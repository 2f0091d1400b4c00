import type { Ladder } from '../engine/circuit/ladder.ts';
import { CHAIN_SIZE, ladderChain } from '../engine/circuit/ladderChain.ts';

export interface TouchstoneAsk {
  /** Stands in a comment at the head. */
  readonly title: string;
  /** Hz, rising. */
  readonly frequency: ArrayLike<number>;
  /** Resistance that both ports are referred to, Ω. */
  readonly reference: number;
}

/**
 * Scattering parameters of a ladder, without its ends, as a Touchstone file of two ports.
 *
 * From the chain matrix at each frequency: with equal real references R and
 * Δ = A + B/R + C·R + D, S11 = (A + B/R − C·R − D)/Δ, S21 = S12 = 2/Δ, S22 = (−A + B/R − C·R + D)/Δ.
 * Source: D. M. Pozar, Microwave Engineering, table 4.2. Format: Touchstone File Format
 * Specification, Rev. 1.1 (2002).
 */
export function touchstoneOf(ladder: Ladder, ask: TouchstoneAsk): string {
  const { frequency, reference } = ask;
  const rows: string[] = [];
  for (let i = 0; i < frequency.length; i += 1) {
    const f = frequency[i] ?? 0;
    const parameters = scattering(ladder, f, reference);
    rows.push([String(Number(f.toFixed(3))), ...parameters.map(written)].join(' '));
  }
  return [
    `! ${ask.title.replace(/\s+/g, ' ')}`,
    '! Crystal filter as designed: worked out, not measured. Port 1 is the end of the source.',
    `# Hz S RI R ${reference}`,
    '! frequency ReS11 ImS11 ReS21 ImS21 ReS12 ImS12 ReS22 ImS22',
    ...rows,
    '',
  ].join('\n');
}

const open = new Float64Array(CHAIN_SIZE);
const short = new Float64Array(CHAIN_SIZE);

/** Re and Im of S11, S21, S12, S22. */
function scattering(ladder: Ladder, f: number, r: number): number[] {
  open.fill(0);
  open[0] = 1;
  ladderChain(ladder, f, open);
  short.fill(0);
  short[2] = 1;
  ladderChain(ladder, f, short);
  let [ar = 0, ai = 0, cr = 0, ci = 0] = open;
  let [br = 0, bi = 0, dr = 0, di = 0] = short;
  let [mr, mi] = [1, 0];
  if (ladder.leakage > 0) {
    // An admittance y past the whole: everything over m = 1 + yB, A + yB, C + y(A + D − 2), D + yB.
    const y = 2 * Math.PI * f * ladder.leakage;
    const [kr, ki] = [-y * bi, y * br];
    [mr, mi] = [1 + kr, ki];
    [cr, ci] = [cr - y * (ai + di), ci + y * (ar + dr - 2)];
    [ar, ai, dr, di] = [ar + kr, ai + ki, dr + kr, di + ki];
  }
  br /= r;
  bi /= r;
  cr *= r;
  ci *= r;
  const all = { re: ar + br + cr + dr, im: ai + bi + ci + di };
  const over = (re: number, im: number): [number, number] => {
    const size = all.re * all.re + all.im * all.im;
    return [(re * all.re + im * all.im) / size, (im * all.re - re * all.im) / size];
  };
  const through = over(2 * mr, 2 * mi);
  return [
    ...over(ar + br - cr - dr, ai + bi - ci - di),
    ...through,
    ...through,
    ...over(-ar + br - cr + dr, -ai + bi - ci + di),
  ];
}

const written = (x: number): string => x.toExponential(8);
