import type { Ladder } from '../engine/circuit/ladder.ts';

export interface NetlistAsk {
  /** First line of the netlist. */
  readonly title: string;
  /** Sweep: first and last frequency, Hz, and how many points. */
  readonly from: number;
  readonly to: number;
  readonly points: number;
}

/**
 * A ladder as a SPICE netlist of plain elements, with its ends, a source, and an AC sweep: it runs
 * in ngspice as it is. `vdb(out)` is the transducer gain in dB.
 *
 * Losses of the capacitors and reactances of the ends are right at the middle of the sweep and very
 * nearly so over a passband: a resistor has no Q. Nodes that only capacitors hold get a path for
 * direct current of 1 PΩ.
 */
export function netlist(ladder: Ladder, ask: NetlistAsk): string {
  const middle = (ask.from + ask.to) / 2;
  const made = parts(ladder, 2 * Math.PI * middle);
  return [
    oneLine(ask.title),
    '* Source, filter as fitted, load. Gain between the ends in dB: vdb(out)',
    ...made.lines,
    '* Paths for direct current',
    ...[...made.floating].map((node) => `rdc_${node} ${node} 0 1e15`),
    `.ac lin ${ask.points} ${number(ask.from)} ${number(ask.to)}`,
    '.print ac vdb(out)',
    '.end',
    '',
  ].join('\n');
}

interface Parts {
  readonly lines: string[];
  readonly floating: Set<string>;
}

function parts(ladder: Ladder, w: number): Parts {
  const made: Parts = { lines: [], floating: new Set() };
  const { source, load, leakage, endC, capacitorQ } = ladder;
  const emf = 2 * Math.sqrt(source[0] / load[0]);
  made.lines.push(`vs emf 0 dc 0 ac ${number(emf)}`);
  const first = source[1] === 0 ? 'in' : 'src';
  made.lines.push(`rs emf ${first} ${number(source[0])}`);
  if (source[1] !== 0) reactance(made, 's', 'src', 'in', source[1], w);
  const last = load[1] === 0 ? 'out' : 'fin';
  if (load[1] !== 0) reactance(made, 'l', 'fin', 'out', load[1], w);
  made.lines.push(`rl out 0 ${number(load[0])}`);
  shunt(made, 'e1', 'in', endC[0], capacitorQ, w);
  shunt(made, 'e2', last, endC[1], capacitorQ, w);
  if (ladder.form === 'shunt') shuntForm(made, ladder, last, w);
  else seriesForm(made, ladder, last, w);
  if (leakage > 0) made.lines.push(`cleak in ${last} ${number(leakage)}`);
  made.floating.delete('out');
  return made;
}

function seriesForm(made: Parts, ladder: Ladder, last: string, w: number): void {
  const { lm, series, coupling, stray, capacitorQ } = ladder;
  let here = 'in';
  made.floating.add(here).add(last);
  for (let k = 0; k < lm.length; k += 1) {
    const next = k === lm.length - 1 ? last : `j${k + 1}`;
    const c = at(series, k);
    const end = c > 0 ? `m${k + 1}` : next;
    crystal(made, ladder, k, here, end);
    if (c > 0) {
      made.floating.add(end);
      made.lines.push(`* Series capacitor of mesh ${k + 1}`);
      inSeries(made, `s${k + 1}`, end, next, c, capacitorQ, w);
    }
    if (k < lm.length - 1) {
      made.floating.add(next);
      made.lines.push(`* Coupling capacitor ${k + 1}`);
      shunt(made, `k${k + 1}`, next, at(coupling, k), capacitorQ, w);
      if (at(stray, k) > 0) made.lines.push(`cstray${k + 1} ${next} 0 ${number(at(stray, k))}`);
    }
    here = next;
  }
}

function shuntForm(made: Parts, ladder: Ladder, last: string, w: number): void {
  const { lm, series, coupling, stray, capacitorQ } = ladder;
  const n = lm.length;
  const node = (k: number) => (k === 0 ? 'in' : k === n - 1 ? last : `n${k + 1}`);
  for (let k = 0; k < n; k += 1) {
    made.floating.add(node(k));
    crystal(made, ladder, k, node(k), '0');
    shunt(made, `s${k + 1}`, node(k), at(series, k), capacitorQ, w);
    if (at(stray, k) > 0) made.lines.push(`cstray${k + 1} ${node(k)} 0 ${number(at(stray, k))}`);
    if (k < n - 1) {
      made.lines.push(`* Coupling capacitor ${k + 1}`);
      inSeries(made, `k${k + 1}`, node(k), node(k + 1), at(coupling, k), capacitorQ, w);
    }
  }
}

/** In the order Rm, Lm, Cm: no node joins Rm and Cm, where a sum would lose digits. */
function crystal(made: Parts, { lm, cm, rm, c0 }: Ladder, k: number, a: string, b: string): void {
  const x = `x${k + 1}`;
  made.lines.push(
    `* Crystal ${k + 1}`,
    `r${x} ${a} ${x}a ${number(at(rm, k))}`,
    `l${x} ${x}a ${x}b ${number(at(lm, k))}`,
    `c${x} ${x}b ${b} ${number(at(cm, k))}`,
    `ch${x} ${a} ${b} ${number(at(c0, k))}`,
  );
}

/** A capacitor to ground; its loss beside it. */
function shunt(made: Parts, name: string, node: string, c: number, q: number, w: number): void {
  if (!(c > 0)) return;
  made.lines.push(`c${name} ${node} 0 ${number(c)}`);
  if (Number.isFinite(q)) made.lines.push(`r${name} ${node} 0 ${number(q / (w * c))}`);
}

/** A capacitor between two nodes; its loss before it. */
function inSeries(
  made: Parts,
  name: string,
  a: string,
  b: string,
  c: number,
  q: number,
  w: number,
): void {
  if (!Number.isFinite(q)) {
    made.lines.push(`c${name} ${a} ${b} ${number(c)}`);
    return;
  }
  made.lines.push(
    `c${name} ${a} ${name} ${number(c)}`,
    `r${name} ${name} ${b} ${number(1 / (w * c * q))}`,
  );
}

/** The reactance of an end, as a coil or capacitor of that reactance in the middle of the sweep. */
function reactance(made: Parts, name: string, a: string, b: string, x: number, w: number): void {
  made.lines.push(
    x > 0 ? `lz${name} ${a} ${b} ${number(x / w)}` : `cz${name} ${a} ${b} ${number(-1 / (w * x))}`,
  );
}

const at = (list: Float64Array, k: number): number => list[k] ?? 0;

/** All digits that matter: a crystal's frequency is good to a part in a hundred million. */
const number = (x: number): string => {
  if (!Number.isFinite(x)) throw new RangeError(`not a value for a netlist: ${x}`);
  return String(Number(x.toPrecision(15)));
};

/** The first line is the title whatever stands there, but it must be one, and not blank. */
const oneLine = (title: string): string => {
  const plain = title.replace(/\s+/g, ' ').trim();
  return `* ${plain === '' ? 'crystal filter' : plain}`;
};
