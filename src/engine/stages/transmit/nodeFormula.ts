import {
  CAPACITOR,
  INDUCTOR,
  MUTUAL,
  type Netlist,
  RESISTOR,
  TRANSCAPACITANCE,
  TRANSCONDUCTANCE,
} from '../../circuit/nodal/netlist.ts';

/** The equation of one node in words of a formula: what flows in, over the node's own admittance. */
export interface NodeFormula {
  /** Terms of the node's own conductance and susceptance. */
  readonly g: string;
  readonly b: string;
  /** Terms that the neighbours and the source send: real and imaginary part of a current. */
  readonly a: string;
  readonly d: string;
  /** Names of the parts and of the neighbours in it. */
  readonly parts: readonly string[];
  readonly neighbours: readonly string[];
}

/**
 * Kirchhoff's current law at a node, from the parts that meet there.
 *
 * Two coupled windings are taken as the inverse of their inductances: L_P with the leakage σ and
 * the turns ratio n.
 *
 * @param at number of the node
 * @param driven name of the closing resistor that has the volt U_1 behind it
 */
export function nodeFormula(net: Netlist, at: number, driven: string): NodeFormula {
  const g: string[] = [];
  const b: string[] = [];
  const a: string[] = [];
  const d: string[] = [];
  const parts = new Set<string>();
  const neighbours = new Set<string>();
  const name = (node: number) => net.nodeNames[node] ?? '';
  /** A neighbour's voltage times a conductance, or times j and a susceptance. */
  const send = (node: number, factor: string, sign: 1 | -1, turned: boolean) => {
    if (node === 0) return;
    neighbours.add(name(node));
    const [plus, minus] = sign > 0 ? ['+', '-'] : ['-', '+'];
    if (turned) {
      a.push(`${minus} y_${name(node)} * ${factor}`);
      d.push(`${plus} x_${name(node)} * ${factor}`);
    } else {
      a.push(`${plus} x_${name(node)} * ${factor}`);
      d.push(`${plus} y_${name(node)} * ${factor}`);
    }
  };
  const coupled = windings(net);
  for (let row = 0; row < net.parts; row += 1) {
    const [i, j] = [net.a[row] ?? 0, net.b[row] ?? 0];
    const part = net.partNames[row] ?? '';
    const kind = net.kind[row];
    if (kind === TRANSCONDUCTANCE || kind === TRANSCAPACITANCE) {
      if (i !== at && j !== at) continue;
      parts.add(part);
      const turned = kind === TRANSCAPACITANCE;
      const factor = turned ? `omega * ${part}` : part;
      // It draws from i and gives to j, by the voltage of plus over minus.
      const leaves = i === at;
      for (const [node, sign] of [
        [net.c[row] ?? 0, leaves ? 1 : -1],
        [net.d[row] ?? 0, leaves ? -1 : 1],
      ] as const) {
        if (node === at) (turned ? b : g).push(`${sign > 0 ? '+' : '-'} ${factor}`);
        else send(node, factor, sign > 0 ? -1 : 1, turned);
      }
      continue;
    }
    if (kind === MUTUAL || (i !== at && j !== at)) continue;
    const other = i === at ? j : i;
    if (kind === RESISTOR) {
      parts.add(part);
      g.push(`+ 1 / ${part}`);
      send(other, `1 / ${part}`, 1, false);
      if (part === driven) a.push(`+ U_1 / ${part}`);
    } else if (kind === CAPACITOR) {
      parts.add(part);
      b.push(`+ omega * ${part}`);
      send(other, `omega * ${part}`, 1, true);
    } else if (kind === INDUCTOR) {
      const pair = coupled.get(row);
      if (pair) {
        for (const symbol of ['L_P', 'sigma', 'n_P']) parts.add(symbol);
        b.push(pair.first ? '- 1 / (omega * L_P * sigma)' : '- n_P^2 / (omega * L_P * sigma)');
        // The other winding sends its voltage over the mutual part of the inverse inductance.
        send(pair.other, 'n_P * sqrt(1 - sigma) / (omega * L_P * sigma)', -1, true);
      } else {
        parts.add(part);
        b.push(`- 1 / (omega * ${part})`);
        send(other, `1 / (omega * ${part})`, -1, true);
      }
    }
  }
  return {
    g: sum(g),
    b: sum(b),
    a: sum(a),
    d: sum(d),
    parts: [...parts],
    neighbours: [...neighbours],
  };
}

/** The two windings of a transformer, each with the other's live node. */
function windings(net: Netlist): Map<number, { first: boolean; other: number }> {
  const found = new Map<number, { first: boolean; other: number }>();
  for (let row = 0; row < net.parts; row += 1) {
    if (net.kind[row] !== MUTUAL) continue;
    const [first, second] = [net.a[row] ?? 0, net.b[row] ?? 0];
    found.set(first, { first: true, other: net.a[second] ?? 0 });
    found.set(second, { first: false, other: net.a[first] ?? 0 });
  }
  return found;
}

const sum = (terms: readonly string[]): string => terms.join(' ').replace(/^\+ /, '');
