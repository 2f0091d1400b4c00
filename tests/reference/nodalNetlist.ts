import {
  CAPACITOR,
  CURRENT,
  INDUCTOR,
  MUTUAL,
  type Netlist,
  RESISTOR,
  TRANSCAPACITANCE,
  TRANSCONDUCTANCE,
  TRANSFORMER,
  VOLTAGE,
} from '../../src/engine/circuit/nodal/netlist.ts';
import { value } from './simulator.ts';

/** A netlist in the simulator's words. Nodes are `n1`, `n2` …, inductors `l` and the row. */
export function nodalNetlist(net: Netlist): string {
  const name = (node: number) => (node === 0 ? '0' : `n${node}`);
  const lines: string[] = [];
  for (let row = 0; row < net.parts; row += 1) {
    const [i, j, k, l] = [net.a, net.b, net.c, net.d].map((column) => column[row] ?? 0);
    const [a, b, c, d] = [i, j, k, l].map((node) => name(node ?? 0));
    const x = net.value[row] ?? 0;
    const line: Record<number, string> = {
      [RESISTOR]: `r${row} ${a} ${b} ${value(x)}`,
      [CAPACITOR]: `c${row} ${a} ${b} ${value(x)}`,
      [INDUCTOR]: `l${row} ${a} ${b} ${value(x)}`,
      [MUTUAL]: `k${row} l${i} l${j} ${value(x / Math.sqrt((net.value[i ?? 0] ?? 0) * (net.value[j ?? 0] ?? 0)))}`,
      [TRANSCONDUCTANCE]: `g${row} ${a} ${b} ${c} ${d} ${value(x)}`,
      // The voltage, copied off the circuit, drives a capacitor; its current is mirrored.
      [TRANSCAPACITANCE]: [
        `e${row} x${row} 0 ${c} ${d} 1`,
        `c${row} x${row} y${row} ${value(x)}`,
        `v${row} y${row} 0 0`,
        `f${row} ${a} ${b} v${row} 1`,
      ].join('\n'),
      // v(a, b) = x·v(c, d), and −x times the current into a flows into c
      [TRANSFORMER]: [
        `e${row} ${a} x${row} ${c} ${d} ${value(x)}`,
        `v${row} x${row} ${b} 0`,
        `f${row} ${d} ${c} v${row} ${value(x)}`,
      ].join('\n'),
      [VOLTAGE]: `v${row} ${a} ${b} dc 0 ac ${value(x)}`,
      [CURRENT]: `i${row} ${a} ${b} dc 0 ac ${value(x)}`,
    };
    lines.push(line[net.kind[row] ?? 0] ?? '');
  }
  return lines.join('\n');
}
