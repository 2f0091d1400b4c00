import type { GummelPoonCard } from '../../circuit/power/gummelPoonAt.ts';
import type { Unit } from '../../quantity/units.ts';

export type CardKey = keyof GummelPoonCard & string;

/** A parameter of a model card. */
export interface CardParameter {
  /** Names it goes by on cards, the usual one first. */
  readonly names: readonly string[];
  readonly what: string;
  readonly unit: Unit;
  /** Values outside are taken for a slip. SI units. */
  readonly range: readonly [number, number];
  /** Cards write 0 for a value without limit. */
  readonly noneIsZero?: true;
}

/** Parameters that are used, in the order in which cards usually have them. */
export const cardParameters: Readonly<Record<CardKey, CardParameter>> = {
  is: { names: ['IS'], what: 'saturation current', unit: 'A', range: [1e-20, 1e-6] },
  bf: { names: ['BF'], what: 'current gain, forward, at its best', unit: '1', range: [1, 5000] },
  nf: { names: ['NF'], what: 'emission coefficient, forward', unit: '1', range: [0.5, 2.5] },
  vaf: {
    names: ['VAF', 'VA'],
    what: 'Early voltage, forward',
    unit: 'V',
    range: [3, 1e4],
    noneIsZero: true,
  },
  ikf: {
    names: ['IKF', 'IK'],
    what: 'current at which the gain begins to fall',
    unit: 'A',
    range: [1e-4, 1e3],
    noneIsZero: true,
  },
  ise: { names: ['ISE'], what: 'leakage, base to emitter', unit: 'A', range: [0, 1e-6] },
  ne: { names: ['NE'], what: 'its emission coefficient', unit: '1', range: [0.9, 5] },
  br: { names: ['BR'], what: 'current gain, reverse', unit: '1', range: [1e-3, 1000] },
  nr: { names: ['NR'], what: 'emission coefficient, reverse', unit: '1', range: [0.5, 2.5] },
  var: {
    names: ['VAR', 'VB'],
    what: 'Early voltage, reverse',
    unit: 'V',
    range: [1, 1e4],
    noneIsZero: true,
  },
  ikr: {
    names: ['IKR'],
    what: 'current at which the reverse gain begins to fall',
    unit: 'A',
    range: [1e-5, 1e3],
    noneIsZero: true,
  },
  isc: { names: ['ISC'], what: 'leakage, base to collector', unit: 'A', range: [0, 1e-6] },
  nc: { names: ['NC'], what: 'its emission coefficient', unit: '1', range: [0.9, 5] },
  rb: { names: ['RB'], what: 'resistance of the base', unit: 'Ω', range: [0, 1000] },
  re: { names: ['RE'], what: 'resistance of the emitter', unit: 'Ω', range: [0, 20] },
  rc: { names: ['RC'], what: 'resistance of the collector', unit: 'Ω', range: [0, 100] },
  cje: {
    names: ['CJE'],
    what: 'capacitance base to emitter, without voltage',
    unit: 'F',
    range: [0, 50e-9],
  },
  vje: {
    names: ['VJE', 'PE'],
    what: 'built-in voltage, base to emitter',
    unit: 'V',
    range: [0.3, 2],
  },
  mje: { names: ['MJE', 'ME'], what: 'grading, base to emitter', unit: '1', range: [0.05, 0.95] },
  cjc: {
    names: ['CJC'],
    what: 'capacitance base to collector, without voltage',
    unit: 'F',
    range: [0, 10e-9],
  },
  vjc: {
    names: ['VJC', 'PC'],
    what: 'built-in voltage, base to collector',
    unit: 'V',
    range: [0.3, 2],
  },
  mjc: {
    names: ['MJC', 'MC'],
    what: 'grading, base to collector',
    unit: '1',
    range: [0.05, 0.95],
  },
  fc: { names: ['FC'], what: 'where the depletion formula ends', unit: '1', range: [0, 0.95] },
  tf: { names: ['TF'], what: 'transit time, forward', unit: 's', range: [0, 1e-6] },
  xtf: { names: ['XTF'], what: 'its growth with current', unit: '1', range: [0, 1e4] },
  vtf: {
    names: ['VTF'],
    what: 'its growth with voltage',
    unit: 'V',
    range: [0.1, 1e4],
    noneIsZero: true,
  },
  itf: { names: ['ITF'], what: 'current at which it grows', unit: 'A', range: [0, 1e3] },
  tr: { names: ['TR'], what: 'transit time, reverse', unit: 's', range: [0, 1e-4] },
  xti: {
    names: ['XTI', 'PT'],
    what: 'temperature exponent of the saturation current',
    unit: '1',
    range: [0, 10],
  },
  eg: { names: ['EG'], what: 'energy gap, in electronvolts', unit: '1', range: [0.5, 2] },
  xtb: { names: ['XTB'], what: 'temperature exponent of the gain', unit: '1', range: [-2, 5] },
};

/** Parameters that cards have and that the equations used here leave out. */
export const leftOut: ReadonlySet<string> = new Set([
  'XCJC',
  'RBM',
  'IRB',
  'PTF',
  'CJS',
  'CCS',
  'VJS',
  'PS',
  'MJS',
  'MS',
  'KF',
  'AF',
  'NK',
  'NKF',
  'ISS',
  'NS',
  'TNOM',
  'TREF',
  'T_MEASURED',
  'LEVEL',
  'QCO',
  'RCO',
  'VO',
  'GAMMA',
  'SUBS',
  'VCEO',
  'ICRATING',
  'MFG',
]);
