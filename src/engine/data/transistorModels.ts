/** A transistor for large signals: a model card at 27 °C in the published SPICE notation. SI units. */
export interface TransistorModel {
  readonly name: string;
  readonly source: string;
  readonly is: number;
  readonly bf: number;
  readonly nf: number;
  readonly vaf: number;
  readonly ikf: number;
  readonly ise: number;
  readonly ne: number;
  readonly br: number;
  readonly nr: number;
  readonly var: number;
  readonly ikr: number;
  readonly isc: number;
  readonly nc: number;
  readonly rb: number;
  readonly re: number;
  readonly rc: number;
  readonly cje: number;
  readonly vje: number;
  readonly mje: number;
  readonly cjc: number;
  readonly vjc: number;
  readonly mjc: number;
  readonly fc: number;
  readonly tf: number;
  readonly xtf: number;
  readonly vtf: number;
  readonly itf: number;
  readonly tr: number;
  /** Temperature exponent of IS, its energy gap in eV, temperature exponent of the gains. */
  readonly xti: number;
  readonly eg: number;
  readonly xtb: number;
}

const none = Number.POSITIVE_INFINITY;

/** What the published equations assume where a card says nothing and a real transistor may too. */
const unsaid = {
  nf: 1,
  vaf: none,
  ikf: none,
  ise: 0,
  ne: 1.5,
  nr: 1,
  var: none,
  ikr: none,
  isc: 0,
  nc: 2,
  fc: 0.5,
  xtf: 0,
  vtf: none,
  itf: 0,
  xti: 3,
  eg: 1.11,
  xtb: 0,
} as const;

/** What simulators of circuits take for every parameter that a card leaves out (from memory). */
export const unsaidOfCards = {
  ...unsaid,
  is: 1e-16,
  bf: 100,
  br: 1,
  rb: 0,
  re: 0,
  rc: 0,
  cje: 0,
  vje: 0.75,
  mje: 0.33,
  cjc: 0,
  vjc: 0.75,
  mjc: 0.33,
  tf: 0,
  tr: 0,
} as const;

/** Medium-power audio drivers of one family differ in voltage only. */
const driver = {
  ...unsaid,
  is: 1e-13,
  bf: 125,
  vaf: 100,
  ikf: 1.6,
  ise: 1.2e-12,
  br: 6,
  var: 25,
  rb: 5,
  re: 0.06,
  rc: 0.25,
  cje: 170e-12,
  vje: 0.72,
  mje: 0.35,
  cjc: 36e-12,
  vjc: 0.6,
  mjc: 0.35,
  tf: 0.68e-9,
  xtf: 4,
  vtf: 8,
  itf: 1.5,
  tr: 60e-9,
  xtb: 1.5,
  source:
    'fitted by hand to the maker’s public figures (hFE 100, fT 190 MHz at 50 mA, Cob 14 pF, VCEsat below 0.5 V and VBE below 1 V at 0.5 A); series resistances, CJE, TR and the growth of the transit time are typical, no source',
} as const;

/** Model cards of the transistors that may become finals. */
export const transistorModels = {
  d139: { ...driver, name: '139-type audio driver' },
  d137: { ...driver, name: '137-type audio driver' },
  d135: { ...driver, name: '135-type audio driver' },
  n3866: {
    ...unsaid,
    name: '2N3866',
    is: 1.2e-14,
    bf: 70,
    vaf: 50,
    ikf: 0.25,
    ise: 1.5e-13,
    br: 2,
    rb: 8,
    re: 0.25,
    rc: 1,
    cje: 14e-12,
    vje: 0.75,
    mje: 0.35,
    cjc: 7e-12,
    vjc: 0.7,
    mjc: 0.33,
    tf: 0.24e-9,
    xtf: 3,
    vtf: 10,
    itf: 0.5,
    tr: 20e-9,
    xtb: 1.5,
    source:
      'fitted by hand to the maker’s figures, from memory (hFE 60, fT 500 MHz at 50 mA, Cob 3 pF); the rest typical, no source',
  },
  n2222: {
    ...unsaid,
    name: '2N2222A',
    is: 14.34e-15,
    bf: 255.9,
    vaf: 74.03,
    ikf: 0.2847,
    ise: 14.34e-15,
    ne: 1.307,
    br: 6.092,
    rb: 10,
    re: 0,
    rc: 1,
    cje: 22.01e-12,
    vje: 0.75,
    mje: 0.377,
    cjc: 7.306e-12,
    vjc: 0.75,
    mjc: 0.3416,
    tf: 411.1e-12,
    xtf: 3,
    vtf: 1.7,
    itf: 0.6,
    tr: 46.91e-9,
    xtb: 1.5,
    source: 'the model card long in public circulation for this type, from memory',
  },
} as const satisfies Readonly<Record<string, TransistorModel>>;

export type TransistorModelKey = keyof typeof transistorModels;
