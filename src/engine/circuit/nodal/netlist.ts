/** Kinds of parts as the columns hold them. */
export const RESISTOR = 1;
export const CAPACITOR = 2;
export const INDUCTOR = 3;
export const MUTUAL = 4;
export const TRANSCONDUCTANCE = 5;
export const TRANSFORMER = 6;
export const VOLTAGE = 7;
export const CURRENT = 8;
export const TRANSCAPACITANCE = 9;

/**
 * A linear circuit as columns of plain numbers, one row a part. Node 0 is ground.
 *
 * What a, b, c and d are: a resistor, capacitor, inductor or source lies between a and b; a
 * transconductance draws value·(v(c) − v(d)) from a and gives it to b, a transcapacitance jω times
 * as much; an ideal transformer makes v(a) − v(b) equal to value·(v(c) − v(d)); a mutual inductance
 * joins the inductors in rows a and b.
 */
export interface Netlist {
  /** Rows in use. */
  parts: number;
  /** Nodes besides ground. */
  nodes: number;
  /** What the parts are called, and the nodes from 1 on; '' where nobody asks. */
  readonly partNames: string[];
  readonly nodeNames: string[];
  readonly kind: Uint8Array;
  readonly a: Int16Array;
  readonly b: Int16Array;
  readonly c: Int16Array;
  readonly d: Int16Array;
  /** Ω, F, H, S, turns ratio, V or A. */
  readonly value: Float64Array;
}

/**
 * An empty netlist.
 *
 * @param capacity parts that it can hold
 */
export function netlist(capacity = 64): Netlist {
  // One piece of memory for all columns of a kind: small arrays by the dozen are dear.
  const room = new Int16Array(4 * capacity);
  const column = (n: number) => room.subarray(n * capacity, (n + 1) * capacity);
  return {
    parts: 0,
    nodes: 0,
    partNames: [],
    nodeNames: [''],
    kind: new Uint8Array(capacity),
    a: column(0),
    b: column(1),
    c: column(2),
    d: column(3),
    value: new Float64Array(capacity),
  };
}

/** A new node, its number. */
export function node(net: Netlist, name = ''): number {
  net.nodes += 1;
  net.nodeNames.push(name);
  return net.nodes;
}

/** @param ohms not 0: join the nodes instead */
export const resistor = (net: Netlist, a: number, b: number, ohms: number, name = ''): number =>
  add(net, RESISTOR, a, b, 0, 0, ohms, name);

/** @param farads 0 for none */
export const capacitor = (net: Netlist, a: number, b: number, farads: number, name = ''): number =>
  add(net, CAPACITOR, a, b, 0, 0, farads, name);

/** @param henries 0 makes a piece of wire whose current is known */
export const inductor = (net: Netlist, a: number, b: number, henries: number, name = ''): number =>
  add(net, INDUCTOR, a, b, 0, 0, henries, name);

/**
 * Couples two inductors whose first ends are in phase.
 *
 * @param first, second rows of the inductors
 * @param coupling coefficient, −1 … 1
 */
export function mutual(net: Netlist, first: number, second: number, coupling: number): number {
  const product = (net.value[first] ?? 0) * (net.value[second] ?? 0);
  return add(net, MUTUAL, first, second, 0, 0, coupling * Math.sqrt(product));
}

/** A current siemens·(v(plus) − v(minus)) flows through it from `from` to `to`. */
export const transconductance = (
  net: Netlist,
  from: number,
  to: number,
  plus: number,
  minus: number,
  siemens: number,
  name = '',
): number => add(net, TRANSCONDUCTANCE, from, to, plus, minus, siemens, name);

/** A current jω·farads·(v(plus) − v(minus)) flows through it from `from` to `to`. */
export const transcapacitance = (
  net: Netlist,
  from: number,
  to: number,
  plus: number,
  minus: number,
  farads: number,
  name = '',
): number => add(net, TRANSCAPACITANCE, from, to, plus, minus, farads, name);

/** An ideal transformer: v(a) − v(b) = ratio·(v(c) − v(d)), and no power lost. */
export const transformer = (
  net: Netlist,
  a: number,
  b: number,
  c: number,
  d: number,
  ratio: number,
): number => add(net, TRANSFORMER, a, b, c, d, ratio);

/** v(plus) − v(minus) = volts. */
export const voltageSource = (net: Netlist, plus: number, minus: number, volts: number): number =>
  add(net, VOLTAGE, plus, minus, 0, 0, volts);

/** Amperes flow through it from `from` to `to`, so out of the circuit at `from`. */
export const currentSource = (net: Netlist, from: number, to: number, amperes: number): number =>
  add(net, CURRENT, from, to, 0, 0, amperes);

/**
 * A crystal: its motional arm, a node inside for each joint, and the holder's capacitance across.
 *
 * @param crystal motional inductance H, capacitance F and resistance Ω, parallel capacitance F
 */
export function crystal(
  net: Netlist,
  a: number,
  b: number,
  {
    lm,
    cm,
    rm,
    c0,
  }: { readonly lm: number; readonly cm: number; readonly rm: number; readonly c0: number },
): void {
  const one = node(net);
  const two = node(net);
  resistor(net, a, one, rm);
  inductor(net, one, two, lm);
  capacitor(net, two, b, cm);
  capacitor(net, a, b, c0);
}

function add(
  net: Netlist,
  kind: number,
  a: number,
  b: number,
  c: number,
  d: number,
  value: number,
  name = '',
): number {
  const row = net.parts;
  if (row >= net.kind.length) throw new Error(`netlist holds ${net.kind.length} parts, not more`);
  net.kind[row] = kind;
  net.a[row] = a;
  net.b[row] = b;
  net.c[row] = c;
  net.d[row] = d;
  net.value[row] = value;
  net.partNames[row] = name;
  net.parts = row + 1;
  return row;
}
