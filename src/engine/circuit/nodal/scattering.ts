import { type Factored, factor, factored, solve } from './factor.ts';
import { type Netlist, resistor } from './netlist.ts';
import { type NodalSystem, nodalSystem } from './nodalSystem.ts';

/** A circuit with two ports to ground, each closed by a resistance, ready for any frequency. */
export interface TwoPort {
  readonly system: NodalSystem;
  readonly lu: Factored;
  /** Nodes of the ports, and the resistances that close them, Ω. */
  readonly ports: readonly [number, number];
  readonly ends: readonly [number, number];
  /** Unknowns with the first, then with the second port driven by a wave of √W. */
  readonly first: { readonly re: Float64Array; readonly im: Float64Array };
  readonly second: { readonly re: Float64Array; readonly im: Float64Array };
  /** s11, s12, s21, s22: real and imaginary part of each in turn. */
  readonly s: Float64Array;
}

/**
 * Makes a two-port of a netlist, which gets the two closing resistors as its last parts.
 *
 * @param ports numbers of the nodes
 * @param ends the real resistances beside them, Ω
 */
export function twoPort(
  net: Netlist,
  ports: readonly [number, number],
  ends: readonly [number, number],
): TwoPort {
  resistor(net, ports[0], 0, ends[0], 'R_s');
  resistor(net, ports[1], 0, ends[1], 'R_L');
  const system = nodalSystem(net);
  const { size } = system;
  const room = new Float64Array(4 * size);
  const part = (n: number) => room.subarray(n * size, (n + 1) * size);
  return {
    system,
    lu: factored(system.size),
    ports,
    ends,
    first: { re: part(0), im: part(1) },
    second: { re: part(2), im: part(3) },
    s: new Float64Array(8),
  };
}

/**
 * Scattering parameters at a frequency, referred to the resistances that close the ports. Fills `s`
 * and the unknowns of both drives; allocates nothing.
 *
 * A wave a comes in with a current of 2a/√R across the closing resistance; the wave out is
 * v/√R − a.
 *
 * @param frequency Hz
 * @return false where the circuit has no answer
 */
export function scattering(two: TwoPort, frequency: number): boolean {
  if (!factor(two.system, 2 * Math.PI * frequency, two.lu)) return false;
  drive(two, two.first, 0);
  drive(two, two.second, 1);
  const { s, ports, ends, first, second } = two;
  const [p, q] = [ports[0] - 1, ports[1] - 1];
  const [r1, r2] = [1 / Math.sqrt(ends[0]), 1 / Math.sqrt(ends[1])];
  s[0] = (first.re[p] ?? 0) * r1 - 1;
  s[1] = (first.im[p] ?? 0) * r1;
  s[2] = (second.re[p] ?? 0) * r1;
  s[3] = (second.im[p] ?? 0) * r1;
  s[4] = (first.re[q] ?? 0) * r2;
  s[5] = (first.im[q] ?? 0) * r2;
  s[6] = (second.re[q] ?? 0) * r2 - 1;
  s[7] = (second.im[q] ?? 0) * r2;
  return true;
}

function drive(two: TwoPort, x: TwoPort['first'], port: 0 | 1): void {
  x.re.fill(0);
  x.im.fill(0);
  x.re[two.ports[port] - 1] = 2 / Math.sqrt(two.ends[port]);
  solve(two.lu, x.re, x.im);
}
