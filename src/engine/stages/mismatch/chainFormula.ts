import type { LadderBranch, OutputLadder } from '../../circuit/outputLadder.ts';
import type { Bound, Look } from '../../fields/workings.ts';

/** One of the four numbers a network is told by. */
export type Wave = 'a' | 'b' | 'c' | 'd';

/**
 * One of the four numbers as a formula from the parts: their matrices multiplied from the collector
 * to the antenna, each made a plain number by R_ant.
 *
 * @param f symbol of the frequency
 */
export function chainFormula(look: Look, wave: Wave, part: 're' | 'im', f: string) {
  const { branches, ratio } = look('output.ladder') as OutputLadder;
  const where: Record<string, Bound> = { R_ant: 'plan.antenna', f_0: 'plan.nominal' };
  const matrices = branches.map((branch, k) => {
    const y = admittance(branch, k + 1, f, where);
    return branch.place === 'shunt' ? `[1, 0; ${y}, 1]` : `[1, 1 / (${y}); 0, 1]`;
  });
  if (ratio !== 1 || matrices.length === 0) {
    where.n_t = { value: ratio, unit: '1', says: 'transformer, antenna side over collector side' };
    matrices.unshift('[1 / n_t, 0; 0, n_t]');
  }
  const row = wave === 'a' || wave === 'b' ? '[1, 0]' : '[0, 1]';
  const column = wave === 'a' || wave === 'c' ? '[1, 1]' : '[1, -1]';
  return { formula: `${part}(${row} * (${matrices.join(' * ')} * ${column}))`, where };
}

/** Admittance of a branch times R_ant; its parts are bound as they stand in the ladder. */
function admittance(
  { l, c, ql, qc }: LadderBranch,
  k: number,
  f: string,
  where: Record<string, Bound>,
): string {
  const terms: string[] = [];
  if (l > 0) {
    where[`L_${k}`] = { value: l, unit: 'H', says: `coil of branch ${k}, as built` };
    let loss = '';
    if (Number.isFinite(ql)) {
      where[`Q_L${k}`] = { value: ql, unit: '1', says: `Q of the coil of branch ${k}` };
      loss = ` + sqrt(${f} * f_0) / Q_L${k}`;
    }
    terms.push(`R_ant / (2 * pi * L_${k} * (i * ${f}${loss}))`);
  }
  if (c > 0) {
    where[`C_${k}`] = { value: c, unit: 'F', says: `capacitor of branch ${k}, as built` };
    let loss = 'i';
    if (Number.isFinite(qc)) {
      where[`Q_C${k}`] = { value: qc, unit: '1', says: `Q of the capacitor of branch ${k}` };
      loss = `(i + 1 / Q_C${k})`;
    }
    terms.push(`2 * pi * ${f} * C_${k} * R_ant * ${loss}`);
  }
  return terms.length === 0 ? '0' : terms.join(' + ');
}
