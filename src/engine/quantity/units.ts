/** How one unit is stored, shown, typed and checked. */
export interface UnitRow {
  /** What the quantity is, with its article, for messages: "a capacitance". */
  readonly kind: string;
  /** The symbol written after the number (and after a prefix). */
  readonly shown: string;
  /** One shown unit in the unit of storage (SI; ratios as fractions, angles in radians). */
  readonly scale: number;
  /** What the shown zero is in the unit of storage; only absolute temperatures have one. */
  readonly zero: number;
  /** SI prefixes taken when shown, besides none. */
  readonly prefixes: string;
  /** Decimals: a fixed count of decimals (levels, angles). Digits: significant digits. */
  readonly figures: 'digits' | 'decimals';
  /** The stored unit as mathjs writes it, for dimension checks; '' is a plain number. */
  readonly dimension: string;
  /**
   * Spellings accepted on entry, each worth so many stored units. A prefix may stand before each
   * that is listed in `prefixed`.
   */
  readonly spellings: Readonly<Record<string, number>>;
  readonly prefixed: readonly string[];
  /** Something a person might type, for messages. */
  readonly example: string;
}

const degree = Math.PI / 180;

type Given = Pick<UnitRow, 'kind' | 'example'> & Partial<UnitRow>;

const row = (shown: string, given: Given): UnitRow => {
  const scale = given.scale ?? 1;
  const spellings = { ...(shown === '' ? {} : { [shown]: scale }), ...given.spellings };
  return {
    shown,
    scale,
    zero: 0,
    prefixes: '',
    figures: 'digits',
    dimension: '',
    prefixed: given.prefixes ? [shown] : [],
    ...given,
    spellings,
  };
};

const ohms = { Ω: 1, R: 1, ohm: 1, ohms: 1 };

/** Every unit that a field, a result or a constant may have. */
export const units = {
  // Plain numbers and ratios
  '1': row('', { kind: 'a plain number', example: '1.5', spellings: { '%': 0.01 } }),
  '%': row('%', {
    kind: 'a percentage',
    scale: 0.01,
    example: '5 %',
    spellings: { percent: 0.01, ppm: 1e-6 },
  }),
  ppm: row('ppm', {
    kind: 'a ratio in ppm',
    scale: 1e-6,
    example: '30 ppm',
    spellings: { '%': 0.01 },
  }),
  'ppm/K': row('ppm/K', {
    kind: 'a temperature coefficient',
    scale: 1e-6,
    dimension: '1/K',
    example: '30 ppm/K',
    spellings: { 'ppm/°C': 1e-6, 'ppm/C': 1e-6, ppm: 1e-6 },
  }),
  turns: row('turns', {
    kind: 'a number of turns',
    example: '16 turns',
    spellings: { turn: 1, t: 1, T: 1 },
  }),
  // Levels
  dB: row('dB', { kind: 'a ratio in dB', figures: 'decimals', example: '−6 dB' }),
  dBm: row('dBm', {
    kind: 'a power level',
    figures: 'decimals',
    example: '7 dBm',
    spellings: { 'dB(m)': 1 },
  }),
  dBc: row('dBc', {
    kind: 'a level below the carrier',
    figures: 'decimals',
    example: '−43 dBc',
    spellings: { dB: 1 },
  }),
  dBi: row('dBi', {
    kind: 'an antenna gain',
    figures: 'decimals',
    example: '2.15 dBi',
    spellings: { dB: 1 },
  }),
  'dBm/Hz': row('dBm/Hz', {
    kind: 'a noise density',
    figures: 'decimals',
    example: '−174 dBm/Hz',
    spellings: { dBm: 1 },
  }),
  'dBµV/m': row('dBµV/m', {
    kind: 'a field strength level',
    figures: 'decimals',
    example: '34 dBµV/m',
    spellings: { dBµ: 1 },
  }),
  'dB/m': row('dB/100 m', {
    kind: 'a line loss',
    scale: 0.01,
    dimension: '1/m',
    example: '2.5 dB/100 m',
    spellings: { 'dB/100m': 0.01, 'dB/m': 1, 'dB/km': 0.001 },
  }),
  // Frequency and time
  Hz: row('Hz', {
    kind: 'a frequency',
    prefixes: 'kMG',
    dimension: 'Hz',
    example: '7.16 MHz',
    spellings: { 'c/s': 1 },
  }),
  'Hz/F': row('Hz/pF', {
    kind: 'a pulling slope',
    scale: 1e12,
    prefixes: 'k',
    dimension: 'Hz/F',
    example: '25 Hz/pF',
  }),
  'Hz/°C': row('Hz/°C', {
    kind: 'a drift with temperature',
    dimension: 'Hz/K',
    example: '5 Hz/°C',
    spellings: { 'Hz/K': 1, 'Hz/C': 1 },
  }),
  s: row('s', {
    kind: 'a time',
    prefixes: 'pnµm',
    dimension: 's',
    example: '1.2 ms',
    spellings: { sec: 1, min: 60 },
  }),
  h: row('h', {
    kind: 'a time in hours',
    scale: 3600,
    dimension: 's',
    example: '6 h',
    spellings: { hour: 3600, hours: 3600, min: 60 },
  }),
  '°': row('°', {
    kind: 'an angle',
    scale: degree,
    figures: 'decimals',
    example: '120°',
    spellings: { deg: degree, degrees: degree, rad: 1 },
  }),
  // Parts
  H: row('H', { kind: 'an inductance', prefixes: 'pnµm', dimension: 'H', example: '1.38 µH' }),
  F: row('F', { kind: 'a capacitance', prefixes: 'fpnµm', dimension: 'F', example: '270 pF' }),
  Ω: row('Ω', {
    kind: 'a resistance',
    prefixes: 'µmkMG',
    dimension: 'ohm',
    example: '3k3',
    spellings: ohms,
    prefixed: Object.keys(ohms),
  }),
  S: row('S', {
    kind: 'a conductance',
    prefixes: 'nµm',
    dimension: 'siemens',
    example: '20 mS',
    spellings: { mho: 1, 'A/V': 1 },
    prefixed: ['S', 'A/V'],
  }),
  'H/t²': row('nH', {
    kind: 'an inductance per turn squared',
    scale: 1e-9,
    dimension: 'H',
    example: '4.9 nH',
    spellings: {
      H: 1,
      'H/t²': 1,
      'H/t2': 1,
      'H/N²': 1,
      'H/N2': 1,
      'µH/100t': 1e-10,
      'mH/1000t': 1e-9,
    },
    prefixed: ['H', 'H/t²', 'H/t2', 'H/N²', 'H/N2'],
  }),
  // Power, voltage, current
  W: row('W', { kind: 'a power', prefixes: 'fpnµmk', dimension: 'W', example: '5 W' }),
  V: row('V', {
    kind: 'a voltage',
    prefixes: 'nµmk',
    dimension: 'V',
    example: '12 V',
    spellings: { Vdc: 1 },
  }),
  Vrms: row('V\u00a0rms', {
    kind: 'an rms voltage',
    prefixes: 'nµmk',
    dimension: 'V',
    example: '15.8 Vrms',
    spellings: { Vrms: 1, Veff: 1 },
    prefixed: ['Vrms', 'Veff'],
  }),
  Vpk: row('V\u00a0pk', {
    kind: 'a peak voltage',
    prefixes: 'nµmk',
    dimension: 'V',
    example: '22 Vpk',
    spellings: { Vpk: 1, Vp: 1, Vpeak: 1 },
    prefixed: ['Vpk', 'Vp', 'Vpeak'],
  }),
  Vpp: row('V\u00a0pp', {
    kind: 'a peak-to-peak voltage',
    prefixes: 'nµmk',
    dimension: 'V',
    example: '44 Vpp',
    spellings: { Vpp: 1, 'Vp-p': 1, Vss: 1 },
    prefixed: ['Vpp', 'Vp-p', 'Vss'],
  }),
  A: row('A', {
    kind: 'a current',
    prefixes: 'fpnµm',
    dimension: 'A',
    example: '250 mA',
    spellings: { Adc: 1 },
  }),
  Arms: row('A\u00a0rms', {
    kind: 'an rms current',
    prefixes: 'nµm',
    dimension: 'A',
    example: '320 mArms',
    spellings: { Arms: 1, Aeff: 1 },
    prefixed: ['Arms', 'Aeff'],
  }),
  Apk: row('A\u00a0pk', {
    kind: 'a peak current',
    prefixes: 'nµm',
    dimension: 'A',
    example: '1.2 Apk',
    spellings: { Apk: 1, Ap: 1, Apeak: 1 },
    prefixed: ['Apk', 'Ap', 'Apeak'],
  }),
  'A/m²': row('A/mm²', {
    kind: 'a current density',
    scale: 1e6,
    dimension: 'A/m^2',
    example: '3 A/mm²',
    spellings: { 'A/mm2': 1e6, 'A/m²': 1, 'A/m2': 1 },
  }),
  'A/V': row('A/V', {
    kind: 'a transconductance',
    prefixes: 'µm',
    dimension: 'A/V',
    example: '38 mA/V',
    spellings: { S: 1 },
    prefixed: ['A/V', 'S'],
  }),
  Ah: row('Ah', {
    kind: 'a battery capacity',
    scale: 3600,
    prefixes: 'm',
    dimension: 'C',
    example: '7 Ah',
  }),
  C: row('C', { kind: 'a charge', prefixes: 'fpnµm', dimension: 'C', example: '2 nC' }),
  J: row('J', { kind: 'an energy', prefixes: 'fpnµmk', dimension: 'J', example: '1 mJ' }),
  // Lengths, areas, volumes
  m: row('m', {
    kind: 'a length',
    prefixes: 'µmk',
    dimension: 'm',
    example: '0.5 mm',
    spellings: { cm: 0.01, in: 0.0254, inch: 0.0254, ft: 0.3048 },
  }),
  'm²': row('mm²', {
    kind: 'an area',
    scale: 1e-6,
    dimension: 'm^2',
    example: '11 mm²',
    spellings: { mm2: 1e-6, 'cm²': 1e-4, cm2: 1e-4, 'm²': 1, m2: 1 },
  }),
  'm³': row('mm³', {
    kind: 'a volume',
    scale: 1e-9,
    dimension: 'm^3',
    example: '330 mm³',
    spellings: { mm3: 1e-9, 'cm³': 1e-6, cm3: 1e-6, 'm³': 1, m3: 1 },
  }),
  '1/m': row('/m', { kind: 'a number per metre', dimension: '1/m', example: '30 /m' }),
  'm/s': row('m/s', { kind: 'a speed', prefixes: 'k', dimension: 'm/s', example: '300 km/s' }),
  // Fields and materials
  T: row('T', {
    kind: 'a flux density',
    prefixes: 'nµm',
    dimension: 'T',
    example: '5 mT',
    spellings: { G: 1e-4, gauss: 1e-4 },
  }),
  'A/m': row('A/m', {
    kind: 'a magnetic field strength',
    prefixes: 'µmk',
    dimension: 'A/m',
    example: '80 mA/m',
  }),
  'V/m': row('V/m', {
    kind: 'an electric field strength',
    prefixes: 'nµmk',
    dimension: 'V/m',
    example: '28 V/m',
  }),
  'W/m²': row('W/m²', {
    kind: 'a power density',
    prefixes: 'fpnµm',
    dimension: 'W/m^2',
    example: '2 W/m²',
    spellings: { 'W/m2': 1 },
    prefixed: ['W/m²', 'W/m2'],
  }),
  'S/m': row('S/m', {
    kind: 'a conductivity',
    prefixes: 'µmkM',
    dimension: 'siemens/m',
    example: '5 mS/m',
  }),
  Ω·m: row('Ω·m', {
    kind: 'a resistivity',
    prefixes: 'nµm',
    dimension: 'ohm*m',
    example: '17.2 nΩ·m',
    spellings: { Ωm: 1, ohm·m: 1, 'Ω*m': 1 },
    prefixed: ['Ω·m', 'Ωm', 'ohm·m', 'Ω*m'],
  }),
  'Ω/m': row('Ω/m', {
    kind: 'a resistance per metre',
    prefixes: 'µmk',
    dimension: 'ohm/m',
    example: '0.13 Ω/m',
    spellings: { 'ohm/m': 1 },
    prefixed: ['Ω/m', 'ohm/m'],
  }),
  'H/m': row('H/m', {
    kind: 'a permeability',
    prefixes: 'nµm',
    dimension: 'H/m',
    example: '1.257 µH/m',
  }),
  'F/m': row('F/m', {
    kind: 'a permittivity',
    prefixes: 'pnµm',
    dimension: 'F/m',
    example: '8.854 pF/m',
  }),
  // Heat
  '°C': row('°C', {
    kind: 'a temperature',
    zero: 273.15,
    figures: 'decimals',
    dimension: 'K',
    example: '25 °C',
    spellings: { C: 1, degC: 1 },
  }),
  K: row('K', {
    kind: 'a temperature difference',
    dimension: 'K',
    example: '20 K',
    spellings: { '°C': 1, degC: 1 },
  }),
  'K/W': row('K/W', {
    kind: 'a thermal resistance',
    dimension: 'K/W',
    example: '10 K/W',
    spellings: { '°C/W': 1, 'C/W': 1 },
  }),
  'J/K': row('J/K', { kind: 'a heat capacity', dimension: 'J/K', example: '0.5 J/K' }),
} as const satisfies Record<string, UnitRow>;

/** The closed list of units. */
export type Unit = keyof typeof units;

/** The row of the table for a unit. */
export const unitRow = (unit: Unit): UnitRow => units[unit];

/** Powers of ten of the SI prefixes in use here; '' is none. */
export const prefixPower: Readonly<Record<string, number>> = {
  f: -15,
  p: -12,
  n: -9,
  µ: -6,
  m: -3,
  '': 0,
  k: 3,
  M: 6,
  G: 9,
  T: 12,
};
