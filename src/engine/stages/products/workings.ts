import { coupledFormula } from '../../circuit/coupledFormula.ts';
import { wayOf } from '../../circuit/mixing.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { productsFields } from './fields.ts';
import { nameOf, type Product, productsUpTo } from './products.ts';
import { HARMONIC_FALL } from './strength.ts';

type Where = Record<string, Bound>;

interface Row {
  readonly name: string;
  readonly at: number;
  readonly into?: 'signal' | 'filter';
  readonly marking: number;
  readonly side: 'difference' | 'sum';
  readonly sent: number | null;
  readonly heard: number | null;
}

const arithmetic = 'arithmetic of a mixer: multiples of both, added and subtracted';

/** What the symbols of the band-pass stand for. */
const parts = (three: boolean): Where => ({
  f_0: 'plan.nominal',
  L: 'front.coil',
  Q_L: 'front.coilQ',
  R_e: 'front.end',
  C_f: 'front.feed',
  C_e: 'front.endC',
  C_k: 'front.couple',
  ...(three ? { C_m: 'front.middleC' } : {}),
});

const rowOf = (look: Look, table: string, index: number): Row | undefined =>
  (look(`products.${table}`) as readonly Row[])[index];

/** The product that a row is about. */
function productOf(look: Look, table: string, index: number): Product {
  const name = rowOf(look, table, index)?.name;
  const most = look('products.most') as number;
  return productsUpTo(most).find((product) => nameOf(product) === name) ?? { m: 1, n: 1, sign: 1 };
}

const multiples = ({ m, n }: Product): Where => ({
  m: { value: m, unit: '1', says: 'multiple of the oscillator' },
  n: { value: n, unit: '1', says: 'multiple of the filter’s frequency' },
});

const named: Working = {
  says: 'So many times the oscillator, so many times the filter’s frequency.',
  rule: 'All multiples up to the orders looked at are tried.',
  where: {},
  source: arithmetic,
};

const orderOf =
  (table: string) =>
  (look: Look, index: number): Working => ({
    says: 'Both multiples together.',
    formula: 'm + n',
    where: multiples(productOf(look, table, index)),
    source: 'definition',
  });

const nearestAt =
  (table: string) =>
  (look: Look, index: number): Working => ({
    says: 'The distance runs along a straight line while tuning: nearest at an end of the range, or where it passes zero.',
    formula: 'f_at',
    where: {
      f_at: {
        value: rowOf(look, table, index)?.at ?? 0,
        unit: 'Hz',
        says: 'where the distance is least within the tuning range',
      },
    },
    source: 'straight line between the ends of the range',
  });

const frequencyAt =
  (table: string) =>
  (look: Look, index: number): Working => {
    const product = productOf(look, table, index);
    return {
      says: 'The multiples added or subtracted.',
      formula: `abs(m * f_at ${product.sign === 1 ? '+' : '-'} n * f_c)`,
      where: { ...multiples(product), f_at: 'row.at', f_c: 'carrier.frequency' },
      source: arithmetic,
    };
  };

/** The operating frequency with the oscillator of this row, as a formula. */
function signalAt(look: Look): string {
  const way = wayOf(
    look('plan.side') as 'difference' | 'sum',
    look('plan.nominal') as number,
    look('plan.filterFrequency') as number,
  );
  if (way === 'adds') return 'f_at + f_c';
  return way === 'takes' ? 'f_c - f_at' : 'f_at - f_c';
}

const besideFormula = (look: Look, onFilter: boolean): Working => ({
  says: onFilter ? 'Less the frequency of the filter’s carrier.' : 'Less what the rig is tuned to.',
  formula: `f_x - ${onFilter ? 'f_c' : `(${signalAt(look)})`}`,
  where: { f_x: 'row.frequency', f_at: 'row.at', f_c: 'carrier.frequency' },
  source: arithmetic,
});

/** Lowest order as a figure that trying all has found. */
const found = (value: number | null | undefined, says: string): Working => ({
  says,
  formula: 'N_f',
  where: {
    N_f: { value: value ?? 0, unit: '1', says: 'lowest order found by trying them in turn' },
  },
  source: arithmetic,
});

export const productsWorkings: StageWorkings<typeof productsFields> = {
  'sent.name': named,
  'sent.order': orderOf('sent'),
  'sent.at': nearestAt('sent'),
  'sent.frequency': frequencyAt('sent'),
  'sent.beside': (look) => besideFormula(look, false),
  'sent.before': (look, index) => {
    const product = productOf(look, 'sent', index);
    const { m, n } = product;
    const levels: Where = { L_o: 'convert.oscillatorLevel', L_s: 'convert.signalLevel' };
    const source = 'Fourier series of a square wave; the rest common practice, no source';
    const assumes = 'Good to some 10 dB: measure it.';
    const fall: Bound = {
      value: HARMONIC_FALL,
      unit: 'dB',
      says: 'fall from harmonic to harmonic',
    };
    if (n === 0) {
      return {
        says: 'The oscillator leaking through, its harmonics weaker from one to the next.',
        formula: 'A_ol - A_h * (m - 1)',
        where: { ...multiples(product), A_ol: 'convert.oscillatorLeft', A_h: fall },
        source,
        assumes,
      };
    }
    if (m === 0) {
      return {
        says: 'The filter’s signal leaking through; each further multiple costs what it lies below the oscillator.',
        formula: 'A_cl - (n - 1) * (L_o - L_s)',
        where: { ...multiples(product), ...levels, A_cl: 'convert.carrierLeft' },
        source,
        assumes,
      };
    }
    const even = m % 2 === 0;
    return {
      says: 'A switch’s harmonics fall as one over their number, even ones are held down by its balance; each further multiple of the signal costs what it lies below the oscillator.',
      formula: `-20 * log10(m)${even ? ' - A_bs' : ''} - (n - 1) * (L_o - L_s)`,
      where: {
        ...multiples(product),
        ...levels,
        ...(even ? { A_bs: 'convert.signalIsolation' } : {}),
      },
      source,
      assumes,
    };
  },
  'sent.left': (look) => {
    const three = look('front.circuits') === 3;
    return {
      says: 'Less what the band-pass takes there, against the operating frequency.',
      formula: `A_0 - 20 * log10(abs${coupledFormula(three, 'f_x')} / abs${coupledFormula(three, 'f_0')})`,
      where: { ...parts(three), f_x: 'row.frequency', A_0: 'row.before' },
      source: 'chain matrices of the ladder, any text on two-ports',
    };
  },
  'sent.outcome': {
    says: 'Against what the band-pass is asked for; close within 6 dB of it.',
    formula: '-A_x >= A_want ? "holds" : -A_x >= A_want - A_c ? "close" : "fails"',
    where: {
      A_x: 'row.left',
      A_want: 'front.wanted',
      A_c: { value: 6, unit: 'dB', says: 'what counts as close' },
    },
    source: 'this program’s own scale',
  },
  'heard.name': named,
  'heard.order': orderOf('heard'),
  'heard.into': {
    says: 'Within the window of the signal, or of the filter.',
    rule: 'Both are looked at for every product.',
    where: { f_w: 'products.window' },
    source: arithmetic,
  },
  'heard.at': nearestAt('heard'),
  'heard.frequency': frequencyAt('heard'),
  'heard.pitch': (look, index) =>
    besideFormula(look, rowOf(look, 'heard', index)?.into === 'filter'),
  lowestSent: {
    says: 'The lowest order within half the band-pass’s width of the signal.',
    rule: 'Products are tried in turn, low orders first.',
    where: { B: 'front.width', N: 'products.most' },
    source: arithmetic,
  },
  lowestHeard: {
    says: 'The lowest order of those that are heard.',
    rule: 'Products are tried in turn, low orders first.',
    where: { f_w: 'products.window', N: 'products.most' },
    source: arithmetic,
  },
  'choices.marking': (look, index) => ({
    says: 'Crystals that are sold cheaply by the dozen.',
    formula: 'f_q',
    where: {
      f_q: {
        value: rowOf(look, 'choices', index)?.marking ?? 0,
        unit: 'Hz',
        says: 'marking of common crystals',
      },
    },
    source: 'common practice, no source',
  }),
  'choices.side': {
    says: 'Both are tried.',
    rule: 'Both are tried.',
    where: {},
    source: arithmetic,
  },
  'choices.oscillator': (look, index) => {
    const way = choiceWay(look, index);
    return {
      says: 'For the operating frequency and this marking.',
      formula: { adds: 'f_0 - f_m', takes: 'f_m - f_0', turns: 'f_0 + f_m' }[way],
      where: { f_0: 'plan.nominal', f_m: 'row.marking' },
      source: arithmetic,
    };
  },
  'choices.image': (look, index) => ({
    says: 'The frequency on the other side of the oscillator.',
    formula: choiceWay(look, index) === 'adds' ? 'abs(f_lo - f_m)' : 'f_lo + f_m',
    where: { f_lo: 'row.oscillator', f_m: 'row.marking' },
    source: arithmetic,
  }),
  'choices.sent': (look, index) =>
    found(
      rowOf(look, 'choices', index)?.sent,
      'Products within half the band-pass’s width of the signal, low orders first.',
    ),
  'choices.heard': (look, index) =>
    found(
      rowOf(look, 'choices', index)?.heard,
      'Products within the window of the signal or of the filter, low orders first.',
    ),
};

const choiceWay = (look: Look, index: number) => {
  const row = rowOf(look, 'choices', index);
  return wayOf(row?.side ?? 'sum', look('plan.nominal') as number, row?.marking ?? 0);
};
