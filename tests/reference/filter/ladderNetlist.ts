import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import { bleeders, value } from '../simulator.ts';

/**
 * A ladder with lossless capacitors as a netlist: a source of 1 V behind the source impedance, the
 * load's resistance between `out` and ground.
 *
 * @param reference where reactive ends have their reactance, Hz
 */
export function ladderNetlist(ladder: Ladder, reference: number): string {
  if (ladder.form === 'shunt') return shuntNetlist(ladder);
  const w = 2 * Math.PI * reference;
  const lines: string[] = ['v1 e 0 dc 0 ac 1'];
  const nodes: string[] = [];
  const node = (name: string) => {
    nodes.push(name);
    return name;
  };
  const reactance = (name: string, a: string, b: string, x: number) =>
    lines.push(
      x > 0 ? `l${name} ${a} ${b} ${value(x / w)}` : `c${name} ${a} ${b} ${value(-1 / (w * x))}`,
    );
  lines.push(`rsource e ${ladder.source[1] === 0 ? 'in' : 'es'} ${value(ladder.source[0])}`);
  if (ladder.source[1] !== 0) reactance('source', 'es', 'in', ladder.source[1]);
  if (ladder.endC[0] > 0) lines.push(`cin in 0 ${value(ladder.endC[0])}`);
  const n = ladder.lm.length;
  const last = ladder.load[1] === 0 ? 'out' : 'filter';
  let here = node('in');
  for (let i = 0; i < n; i += 1) {
    const junction = i === n - 1 ? last : `j${i}`;
    const c = ladder.series[i] ?? 0;
    const end = c > 0 ? node(`s${i}`) : junction;
    // No bleeder inside the motional arm: across Cm’s megohms even 1 PΩ would be seen.
    const [a, b] = [`a${i}`, `b${i}`];
    lines.push(
      // In this order Rm and Cm share no node, where a sum of 1/Rm and ωCm would lose digits.
      `r${i} ${here} ${a} ${value(ladder.rm[i] ?? 0)}`,
      `l${i} ${a} ${b} ${value(ladder.lm[i] ?? 0)}`,
      `cm${i} ${b} ${end} ${value(ladder.cm[i] ?? 0)}`,
      `ch${i} ${here} ${end} ${value(ladder.c0[i] ?? 0)}`,
    );
    if (c > 0) lines.push(`cs${i} ${end} ${junction} ${value(c)}`);
    if (i < n - 1) {
      const whole = (ladder.coupling[i] ?? 0) + (ladder.stray[i] ?? 0);
      lines.push(`ck${i} ${node(junction)} 0 ${value(whole)}`);
    }
    here = junction;
  }
  if (ladder.endC[1] > 0) lines.push(`cout ${last} 0 ${value(ladder.endC[1])}`);
  if (ladder.leakage > 0) lines.push(`cleak in ${last} ${value(ladder.leakage)}`);
  if (ladder.load[1] !== 0) reactance('load', node('filter'), 'out', ladder.load[1]);
  lines.push(`rload out 0 ${value(ladder.load[0])}`);
  lines.push(bleeders(nodes));
  return lines.join('\n');
}

/** Crystals to ground between resistive ends; with lossless capacitors. */
function shuntNetlist(ladder: Ladder): string {
  const n = ladder.lm.length;
  const node = (i: number) => (i === n - 1 ? 'out' : `n${i}`);
  const lines: string[] = ['v1 e 0 dc 0 ac 1', `rsource e n0 ${value(ladder.source[0])}`];
  for (let i = 0; i < n; i += 1) {
    const own =
      (ladder.c0[i] ?? 0) +
      (ladder.series[i] ?? 0) +
      (ladder.stray[i] ?? 0) +
      (i === 0 ? ladder.endC[0] : 0) +
      (i === n - 1 ? ladder.endC[1] : 0);
    lines.push(
      `r${i} ${node(i)} a${i} ${value(ladder.rm[i] ?? 0)}`,
      `l${i} a${i} b${i} ${value(ladder.lm[i] ?? 0)}`,
      `cm${i} b${i} 0 ${value(ladder.cm[i] ?? 0)}`,
      `ch${i} ${node(i)} 0 ${value(own)}`,
    );
    if (i < n - 1) lines.push(`ck${i} ${node(i)} ${node(i + 1)} ${value(ladder.coupling[i] ?? 0)}`);
  }
  if (ladder.leakage > 0) lines.push(`cleak n0 out ${value(ladder.leakage)}`);
  lines.push(`rload out 0 ${value(ladder.load[0])}`);
  lines.push(bleeders(Array.from({ length: n }, (_, i) => node(i))));
  return lines.join('\n');
}
