import type { Bound, Look, Working } from '../../fields/workings.ts';
import { elementsOf, symbolOf } from './chainFormula.ts';
import type { Part, Share } from './part.ts';
import { designOf, partOf } from './partOf.ts';

/**
 * The value a part is meant to have: the shares of its design; a trap's capacitor less the coil's own
 * capacitance; a trap's coil so that the notch comes where it belongs.
 */
export function exactWorking(look: Look, index: number): Working {
  const rows = elementsOf(look);
  const row = rows[index];
  const part = partOf(look, row?.label);
  if (part?.kind === 'across')
    return acrossWorking(look, part, ownOf(look, rows[index - 1]?.label));
  if (part?.kind === 'coil' && part.notch !== null) return tunedWorking(look, part, index);
  return designWorking(look, part);
}

/** The capacitor across a coil, the coil's own taken off. */
function acrossWorking(look: Look, part: Part, own: Bound): Working {
  const { where, formula, ...told } = designWorking(look, part);
  return {
    ...told,
    says: `${told.says} The coil’s own capacitance is a share of it.`,
    formula: `${formula} - C_s`,
    where: { ...where, C_s: own },
  };
}

/** The coil of a trap: it resonates at the notch with what lies across it. */
function tunedWorking(look: Look, part: Part, index: number): Working {
  const next = elementsOf(look)[index + 1];
  const capacitor = next?.part === 'across' ? next : undefined;
  const where: Record<string, Bound> = { C_s: ownOf(look, part.label) };
  const symbol = capacitor ? symbolOf(capacitor.label) : '';
  if (capacitor) {
    where[symbol] = {
      value: capacitor.fittedC ?? 0,
      unit: 'F',
      says: `${capacitor.label} as fitted`,
    };
  }
  where.f_t = notchOf(part);
  if (part.order !== null) where.f_0 = 'plan.nominal';
  return {
    says:
      part.order === null
        ? 'Meant to put the notch where the filter has it, together with what lies across it.'
        : 'The plain coil made smaller by 1 − 1/n², n the harmonic; with what lies across it, the notch falls on the harmonic.',
    formula: `1 / ((2 * pi * ${part.order === null ? 'f_t' : `${part.order} * f_0`})^2 * (${capacitor ? `${symbol} + ` : ''}C_s))`,
    where: part.order === null ? where : omit(where, 'f_t'),
    source: 'Thomson’s formula',
  };
}

const omit = (where: Record<string, Bound>, key: string): Record<string, Bound> =>
  Object.fromEntries(Object.entries(where).filter(([each]) => each !== key));

const notchOf = (part: Part): Bound => ({
  value: part.notch ?? 0,
  unit: 'Hz',
  says: `where ${part.label} is to stop everything`,
  source: 'elliptic function of the filter',
});

/** A coil's own capacitance, typed or as wound. */
function ownOf(look: Look, label: string | undefined): Bound {
  if (look('output.selfCapacitance') !== null) return 'output.selfCapacitance';
  const rows = (look('output.asWound') ?? []) as readonly { label: string; own: number }[];
  return {
    value: rows.find((row) => row.label === label)?.own ?? 0,
    unit: 'F',
    says: `own capacitance of ${label}, in the table of coils as wound`,
  };
}

/** The sum of the shares that make a part's exact value. */
function designWorking(look: Look, part: Part | undefined): Working & { readonly formula: string } {
  const where: Record<string, Bound> = {};
  const shares = part?.shares ?? [];
  const terms = shares.map((share, k) => term(look, share, part, k, where));
  return {
    says:
      terms.length > 1
        ? 'Two capacitors that meet at one point are one: their values add.'
        : saysOf(shares[0]),
    formula: terms.join(' + '),
    where,
    source: sourceOf(shares),
  };
}

function term(
  look: Look,
  share: Share,
  part: Part | undefined,
  k: number,
  where: Record<string, Bound>,
): string {
  if (share.of === 'prototype') {
    const g = `g_${k + 1}`;
    where.R_e = 'output.filterEnd';
    where[g] = { value: share.g, unit: '1', says: 'value of the prototype' };
    where.f_c = 'output.cutoff';
    return part?.kind === 'coil' ? `${g} * R_e / (2 * pi * f_c)` : `${g} / (2 * pi * f_c * R_e)`;
  }
  where.f_0 = 'plan.nominal';
  if (share.of === 'acrossTrap') {
    const parts = designOf(look);
    const coil = parts[parts.findIndex(({ label }) => label === part?.label) - 1];
    const [own] = coil?.shares ?? [];
    const whole = own ? term(look, own, coil, k, where) : '0';
    where.L_t = {
      formula: `${whole} * (1 - 1 / ${part?.order}^2)`,
      unit: 'H',
      says: 'the plain coil made smaller, so that its reactance at the operating frequency stays',
    };
    return `1 / ((2 * pi * ${part?.order} * f_0)^2 * L_t)`;
  }
  if (share.of === 'halfCoil' || share.of === 'halfCapacitor') {
    where.R_ant = 'plan.antenna';
    return share.of === 'halfCoil' ? 'R_ant / (2 * pi * f_0)' : '1 / (2 * pi * f_0 * R_ant)';
  }
  where.R_e = 'output.filterEnd';
  where.R_c = 'transmit.collectorLoad';
  where.Q_pi = 'output.loadedQ';
  const sourceIsHigh =
    (look('transmit.collectorLoad') as number) >= (look('output.filterEnd') as number);
  const [high, low] = sourceIsHigh ? ['R_c', 'R_e'] : ['R_e', 'R_c'];
  where.R_v = {
    formula: `${high} / (Q_pi^2 + 1)`,
    unit: 'Ω',
    says: 'virtual resistance in which both ends meet',
  };
  where.Q_low = {
    formula: `sqrt(max(0, ${low} / R_v - 1))`,
    unit: '1',
    says: 'loaded Q of the lower end',
  };
  if (share.of === 'piCoil') return 'R_v * (Q_pi + Q_low) / (2 * pi * f_0)';
  const isHigh = (share.of === 'piSource') === sourceIsHigh;
  const own = share.of === 'piSource' ? 'R_c' : 'R_e';
  return `${isHigh ? 'Q_pi' : 'Q_low'} / (2 * pi * f_0 * ${own})`;
}

function saysOf(share: Share | undefined): string {
  if (share?.of === 'prototype')
    return 'The prototype’s value, brought to the filter’s resistance and the cutoff.';
  if (share?.of === 'halfCoil' || share?.of === 'halfCapacitor') {
    return 'In a half-wave section every reactance equals the antenna’s resistance.';
  }
  if (share?.of === 'acrossTrap') return 'What resonates with the trap’s coil at the harmonic.';
  return 'Two L matches back to back: both ends meet in a virtual resistance.';
}

function sourceOf(shares: readonly Share[]): string {
  return shares.some(({ of }) => of === 'prototype')
    ? 'Matthaei, Young, Jones, Microwave Filters, 1964, section 4.04'
    : 'closed form';
}
