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
} from './netlist.ts';

/**
 * The node equations of a circuit, (G + jωC)·x = s. The unknowns x are the voltages of the nodes
 * 1, 2 … and behind them the currents of inductors, transformers and voltage sources. Frequency is
 * not in it: one stamping serves them all.
 */
export interface NodalSystem {
  /** Unknowns. */
  readonly size: number;
  /** What does not change with frequency: conductances and ones. size × size, row after row. */
  readonly g: Float64Array;
  /** What goes with jω: capacitances, and inductances with a minus. */
  readonly c: Float64Array;
  /** The sources of the netlist, all in phase. */
  readonly sources: Float64Array;
  /** For each part the unknown that is its current; −1 where it has none. */
  readonly branch: Int16Array;
}

/**
 * Room for the node equations of a netlist, stamped.
 *
 * @source Ho, Ruehli & Brennan, The Modified Nodal Approach to Network Analysis, IEEE Trans. CAS-22
 *   (1975), 504
 */
export function nodalSystem(net: Netlist): NodalSystem {
  const branch = new Int16Array(net.parts).fill(-1);
  let size = net.nodes;
  for (let row = 0; row < net.parts; row += 1) {
    const kind = net.kind[row];
    if (kind === INDUCTOR || kind === TRANSFORMER || kind === VOLTAGE) {
      branch[row] = size;
      size += 1;
    }
  }
  const room = new Float64Array(2 * size * size + size);
  const system = {
    size,
    g: room.subarray(0, size * size),
    c: room.subarray(size * size, 2 * size * size),
    sources: room.subarray(2 * size * size),
    branch,
  };
  stamp(net, system);
  return system;
}

/** Stamps a netlist anew, after values in it have changed; its parts and nodes must be the same. */
export function stamp(net: Netlist, system: NodalSystem): void {
  const { size, g, c, sources, branch } = system;
  g.fill(0);
  c.fill(0);
  sources.fill(0);
  const put = (to: Float64Array, i: number, j: number, x: number) => {
    if (i >= 0 && j >= 0) to[i * size + j] = (to[i * size + j] ?? 0) + x;
  };
  const across = (to: Float64Array, i: number, j: number, x: number) => {
    put(to, i, i, x);
    put(to, j, j, x);
    put(to, i, j, -x);
    put(to, j, i, -x);
  };
  const controlled = (to: Float64Array, i: number, j: number, m: number, n: number, x: number) => {
    put(to, i, m, x);
    put(to, i, n, -x);
    put(to, j, m, -x);
    put(to, j, n, x);
  };
  // A current that leaves node i and enters node j, and the voltage between them.
  const through = (i: number, j: number, k: number, times: number) => {
    put(g, i, k, times);
    put(g, j, k, -times);
    put(g, k, i, times);
    put(g, k, j, -times);
  };
  const drive = (i: number, x: number) => {
    if (i >= 0) sources[i] = (sources[i] ?? 0) + x;
  };
  for (let row = 0; row < net.parts; row += 1) {
    const i = (net.a[row] ?? 0) - 1;
    const j = (net.b[row] ?? 0) - 1;
    const m = (net.c[row] ?? 0) - 1;
    const n = (net.d[row] ?? 0) - 1;
    const value = net.value[row] ?? 0;
    const k = branch[row] ?? -1;
    switch (net.kind[row]) {
      case RESISTOR:
        across(g, i, j, 1 / value);
        break;
      case CAPACITOR:
        across(c, i, j, value);
        break;
      case INDUCTOR:
        through(i, j, k, 1);
        put(c, k, k, -value);
        break;
      case MUTUAL: {
        const first = branch[net.a[row] ?? 0] ?? -1;
        const second = branch[net.b[row] ?? 0] ?? -1;
        put(c, first, second, -value);
        put(c, second, first, -value);
        break;
      }
      case TRANSCONDUCTANCE:
        controlled(g, i, j, m, n, value);
        break;
      case TRANSCAPACITANCE:
        controlled(c, i, j, m, n, value);
        break;
      case TRANSFORMER:
        through(i, j, k, 1);
        through(m, n, k, -value);
        break;
      case VOLTAGE:
        through(i, j, k, 1);
        drive(k, value);
        break;
      case CURRENT:
        drive(i, -value);
        drive(j, value);
        break;
    }
  }
}
