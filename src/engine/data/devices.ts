/** A bipolar transistor: limits and typical figures, every one at 25 °C unless said otherwise. */
export interface Transistor {
  readonly name: string;
  readonly package: string;
  /** Collector to emitter with the base open, V: the limit. */
  readonly vceo: number;
  /** Collector current, A: the limit for direct current. */
  readonly ic: number;
  /** Heat at 25 °C ambient, free-standing, W: the limit. */
  readonly powerAmbient: number;
  /** Heat at 25 °C case, W: the limit; null where the package isn't meant for a heat sink. */
  readonly powerCase: number | null;
  /** Junction temperature, K: the limit. */
  readonly junction: number;
  /** Junction to ambient, K/W. */
  readonly toAmbient: number;
  /** Junction to case, K/W; null where the package isn't meant for a heat sink. */
  readonly toCase: number | null;
  /** Transition frequency, Hz, at a few tens of milliamperes. */
  readonly ft: number;
  /** Current gain for direct current: least, usual. */
  readonly hfe: readonly [number, number];
  /** Collector to base capacitance, F, typical. */
  readonly cob: number;
  /** Resistance of the base, Ω, typical; no data sheet gives it. */
  readonly base: number;
  /** What models of small stages want besides; none of it guaranteed by a maker. */
  readonly small: SmallSignal;
  readonly source: string;
}

/** Under which conditions the figures of a transistor hold, and what else its models want. */
export interface SmallSignal {
  /** Current gain of the best of its kind, 1. */
  readonly hfeMost: number;
  /** Collector current A and collector–emitter voltage V at which `ft` is measured. */
  readonly ftAt: readonly [number, number];
  /** Reverse voltage at which `cob` is measured, V. */
  readonly cobAt: number;
  /** Emitter–base capacitance F, at a reverse voltage V. */
  readonly cib: readonly [number, number];
  /** Base–emitter voltage V, at a collector current A. */
  readonly vbe: readonly [number, number];
  /** Early voltage, V. */
  readonly early: number;
  readonly source: string;
}

export type TransistorKey = 'd139' | 'd137' | 'd135' | 'n3866' | 'n2222' | 'c548' | 'n3904';

const kelvin = (celsius: number) => celsius + 273.15;
const memory = 'maker’s data sheet, from memory; rbb’ and Cob typical';

/** Medium-power audio drivers of one family differ in voltage only. */
const driver = {
  package: 'TO-126',
  ic: 1.5,
  powerAmbient: 1.25,
  powerCase: 12.5,
  junction: kelvin(150),
  toAmbient: 100,
  toCase: 10,
  ft: 190e6,
  hfe: [40, 100],
  cob: 14e-12,
  base: 5,
  small: {
    hfeMost: 250,
    ftAt: [50e-3, 5],
    cobAt: 10,
    cib: [70e-12, 0.5],
    vbe: [0.63, 10e-3],
    early: 100,
    source: 'hFE to 250, fT at 50 mA and 5 V: maker’s data sheet, from memory; the rest typical',
  },
} as const;

/** Transistors as makers’ public data sheets have them. */
export const transistors: Readonly<Record<TransistorKey, Transistor>> = {
  d139: {
    ...driver,
    name: '139-type audio driver',
    vceo: 80,
    source:
      'maker’s public data sheet: 80 V, 1.5 A, 12.5 W, 10 and 100 K/W, fT 190–250 MHz; hFE, Cob, rbb’ typical, from memory',
  },
  d137: { ...driver, name: '137-type audio driver', vceo: 60, source: memory },
  d135: { ...driver, name: '135-type audio driver', vceo: 45, source: memory },
  n3866: {
    name: '2N3866',
    package: 'TO-39',
    vceo: 30,
    ic: 0.4,
    powerAmbient: 1,
    powerCase: 5,
    junction: kelvin(200),
    toAmbient: 175,
    toCase: 35,
    ft: 500e6,
    hfe: [10, 60],
    cob: 3e-12,
    base: 8,
    small: {
      hfeMost: 200,
      ftAt: [50e-3, 15],
      cobAt: 28,
      cib: [12e-12, 0.5],
      vbe: [0.75, 50e-3],
      early: 50,
      source:
        'hFE to 200, fT at 50 mA and 15 V, Cob at 28 V: maker’s data sheet, from memory; the rest typical',
    },
    source: memory,
  },
  n2222: {
    name: '2N2222A (TO-92)',
    package: 'TO-92',
    vceo: 40,
    ic: 0.6,
    powerAmbient: 0.625,
    powerCase: null,
    junction: kelvin(150),
    toAmbient: 200,
    toCase: null,
    ft: 300e6,
    hfe: [75, 150],
    cob: 5e-12,
    base: 15,
    small: {
      hfeMost: 300,
      ftAt: [20e-3, 20],
      cobAt: 10,
      cib: [20e-12, 0.5],
      vbe: [0.68, 10e-3],
      early: 75,
      source:
        'hFE to 300, fT at 20 mA and 20 V, Cob at 10 V, Cib below 25 pF: maker’s data sheet, from memory; VBE and Early voltage typical',
    },
    source:
      'maker’s public data sheet: 40 V, 600 mA, 625 mW, fT 300 MHz; hFE, Cob, K/W, rbb’ from memory',
  },
  c548: {
    name: 'BC548B',
    package: 'TO-92',
    vceo: 30,
    ic: 0.1,
    powerAmbient: 0.5,
    powerCase: null,
    junction: kelvin(150),
    toAmbient: 250,
    toCase: null,
    ft: 250e6,
    hfe: [200, 290],
    cob: 3.5e-12,
    base: 80,
    small: {
      hfeMost: 450,
      ftAt: [10e-3, 5],
      cobAt: 10,
      cib: [9e-12, 0.5],
      vbe: [0.66, 2e-3],
      early: 65,
      source:
        'hFE to 450, VBE 0.66 V at 2 mA, fT at 10 mA and 5 V, Ceb 9 pF: maker’s data sheet, from memory; Early voltage typical',
    },
    source:
      'maker’s public data sheet: 30 V, 100 mA, 500 mW, 250 K/W, hFE B 200–450, Ccb 3.5 pF; fT, rbb’ from memory',
  },
  n3904: {
    name: '2N3904',
    package: 'TO-92',
    vceo: 40,
    ic: 0.2,
    powerAmbient: 0.625,
    powerCase: null,
    junction: kelvin(150),
    toAmbient: 200,
    toCase: null,
    ft: 300e6,
    hfe: [100, 180],
    cob: 4e-12,
    base: 20,
    small: {
      hfeMost: 300,
      ftAt: [10e-3, 20],
      cobAt: 5,
      cib: [7e-12, 0.5],
      vbe: [0.7, 10e-3],
      early: 75,
      source:
        'hFE to 300, fT at 10 mA and 20 V, Cob at 5 V, Cib below 8 pF: maker’s data sheet, from memory; VBE and Early voltage typical',
    },
    source: memory,
  },
};

/** An audio power amplifier in one chip. */
export interface AudioChip {
  readonly name: string;
  /** Supply, V: least and most in use. */
  readonly supply: readonly [number, number];
  /** Supply current without signal, A. */
  readonly idle: number;
  /** What stands between supply and speaker at full swing, Ω. */
  readonly output: number;
  /** Heat the package takes at 25 °C, W: the limit. */
  readonly power: number;
  readonly source: string;
}

export type AudioChipKey = 'a386' | 'a386high';

/** 2.65 Ω puts 317 mW at 6 V and 714 mW at 9 V into 8 Ω, where the sheet has 325 and 700 mW. */
const chipOutput = 2.65;

export const audioChips: Readonly<Record<AudioChipKey, AudioChip>> = {
  a386: {
    name: '386 type, to 12 V',
    supply: [4, 12],
    idle: 4e-3,
    output: chipOutput,
    power: 1.25,
    source:
      'maker’s public data sheet: gain 20 to 200, 4 mA, 325 mW at 6 V and 700 mW at 9 V into 8 Ω; 1.25 W from memory',
  },
  a386high: {
    name: '386 type, to 18 V',
    supply: [5, 18],
    idle: 4e-3,
    output: chipOutput,
    power: 1.25,
    source: memory,
  },
};
