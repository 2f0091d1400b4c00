import { TURNS_TOLERANCE } from '../../circuit/turnsRatio.ts';
import type { Bound, Look, Working } from '../../fields/workings.ts';

/** Tables whose rows are transformers. */
type Table = 'transformers' | 'transformerMixes';

interface Row {
  readonly label: string;
  readonly turns: number;
  readonly secondTurns: number;
  readonly turnsExact: number;
  readonly turnsFlux: number | null;
}

const rowsOf = (look: Look, table: Table) => look(`windings.${table}`) as readonly Row[];

/** Which of the transformers a row is: the output's, the modulator's, or the place of a coupling. */
export function kindAt(look: Look, table: Table, index: number): 'output' | 'trifilar' | number {
  const label = rowsOf(look, table)[index]?.label;
  if (label === 'Output transformer') return 'output';
  if (label === 'Modulator') return 'trifilar';
  const couplings = look('transmit.couplings') as readonly { readonly place: string }[];
  return couplings.findIndex(({ place }) => place === label);
}

/** Whether the output transformer's first winding has a tap in its middle. */
export const isTapped = (look: Look): boolean =>
  (look('windings.transformers') as readonly { readonly form: string }[])[0]?.form === 'tapped';

/** How the windings of a row's transformer lie. */
export function formAt(look: Look, table: Table, index: number): string | undefined {
  const label = rowsOf(look, table)[index]?.label;
  const rows = look('windings.transformers') as readonly {
    readonly label: string;
    readonly form: string;
  }[];
  return rows.find((row) => row.label === label)?.form;
}

/** Turns of the first winding over the second, as a symbol with what it needs. */
export function ratioAt(
  look: Look,
  table: Table,
  index: number,
): { symbol: string; where: Record<string, Bound> } {
  const kind = kindAt(look, table, index);
  if (kind === 'trifilar') return { symbol: '1', where: {} };
  if (kind === 'output') {
    return {
      symbol: 'r_12',
      where: {
        n_t: 'output.transformerRatio',
        r_12: {
          formula: isTapped(look) ? '1 / n_t / 2' : '1 / n_t',
          unit: '1',
          says: isTapped(look) ? 'turns, half the first over second' : 'turns, first over second',
        },
      },
    };
  }
  const couplings = look('transmit.couplings') as readonly { readonly turns: number }[];
  const whole: Bound = {
    value: couplings[kind]?.turns ?? 1,
    unit: '1',
    says: 'turns, first over second, from Transmit',
  };
  return {
    symbol: 'r_12',
    where:
      formAt(look, table, index) === 'halves'
        ? {
            n_12: whole,
            r_12: { formula: '2 * n_12', unit: '1', says: 'turns, first over half the second' },
          }
        : { r_12: whole },
  };
}

/** Whole turns of one side. */
export function turnsOf(
  look: Look,
  table: Table,
  index: number,
  side: 'first' | 'second',
): Working {
  const kind = kindAt(look, table, index);
  const powered = (rowsOf(look, table)[index]?.turnsFlux ?? null) !== null;
  const least: Record<string, Bound> = powered
    ? { N_x: 'row.turnsExact', N_B: 'row.turnsFlux' }
    : { N_x: 'row.turnsExact' };
  least.N_min = {
    formula: `max(1, ceil(${powered ? 'max(N_x, N_B)' : 'N_x'}))`,
    unit: 'turns',
    says: 'whole turns that suffice on the smaller winding',
  };
  if (kind === 'trifilar' && look('windings.modulatorTurns') !== null) {
    return {
      says: 'As you want them.',
      formula: 'N',
      where: { N: 'windings.modulatorTurns' },
      source: 'as typed',
    };
  }
  if (kind === 'trifilar') {
    return {
      says: 'The next whole turn that suffices.',
      formula: 'N_min',
      where: least,
      source: 'one turn is one pass through the hole',
    };
  }
  if (kind === 'output' && look('output.transformerPrimary') !== null) {
    return {
      says: 'Both numbers of the ratio are multiplied until the smaller winding suffices.',
      formula: isTapped(look)
        ? `ceil(N_min / min(N_p, 2 * N_s)) * ${side === 'first' ? 'N_p' : '2 * N_s'}`
        : `ceil(N_min / min(N_p, N_s)) * ${side === 'first' ? 'N_p' : 'N_s'}`,
      where: { ...least, N_p: 'output.transformerPrimary', N_s: 'output.transformerSecondary' },
      source: 'closed form of the ideal transformer',
    };
  }
  return grown(look, table, index, side, least);
}

/** The smaller winding grows until the ratio is met in whole turns. */
function grown(
  look: Look,
  table: Table,
  index: number,
  side: 'first' | 'second',
  least: Record<string, Bound>,
): Working {
  const row = rowsOf(look, table)[index];
  const { where } = ratioAt(look, table, index);
  const few = Math.min(row?.turns ?? 1, row?.secondTurns ?? 1);
  const start = Math.max(1, Math.ceil(Math.max(row?.turnsExact ?? 1, row?.turnsFlux ?? 0)));
  const tries = Array.from({ length: Math.max(0, few - start) }, (_, k) => {
    const n = `(N_min + ${k})`;
    return `abs(round(${n} * n_s) / (${n} * n_s) - 1) <= t_n ? ${n} : `;
  }).join('');
  const found = `(${tries}N_min + ${Math.max(0, few - start)})`;
  const firstIsMany = (row?.turns ?? 1) >= (row?.secondTurns ?? 1);
  const wantsMany = (side === 'first') === firstIsMany;
  return {
    says: `The smaller winding grows from the least that suffices until whole turns meet the ratio within ${100 * TURNS_TOLERANCE} %.`,
    formula: wantsMany ? `round(${found} * n_s)` : found,
    where: {
      ...least,
      ...where,
      n_s: { formula: 'max(r_12, 1 / r_12)', unit: '1', says: 'ratio, larger over smaller' },
      t_n: { value: TURNS_TOLERANCE, unit: '1', says: 'how far whole turns may be off' },
    },
    source: 'closed form of the ideal transformer',
  };
}
