import { prefixPower, type Unit, unitRow } from './units.ts';

/** A number and its unit with prefix, to be set apart in tables and figures. */
export interface Parts {
  readonly number: string;
  readonly unit: string;
}

const noBreak = '\u00a0';
const groupGap = '\u202f';
const minus = '\u2212';

/**
 * A value in engineering notation: "4.70 µH", "7.20301 MHz", "−23.4 dB", "2400 Hz".
 *
 * @param value in the unit of storage (SI; fraction for %, radians for °, kelvin for °C)
 * @param unit a row of the table of units
 * @param digits significant digits; for levels, angles and temperatures (dB, dBm, °, °C …) the
 *   number has `digits − 2` decimals at any size, so the usual 3 gives tenths
 * @return number, no-break space, unit. Frequencies below 10 kHz stay in hertz. Not-a-number
 *   gives "–", so that nothing false is ever read.
 */
export function format(value: number, unit: Unit, digits = 3): string {
  return join(formatParts(value, unit, digits));
}

/** As `format`, with number and unit apart. */
export function formatParts(value: number, unit: Unit, digits = 3): Parts {
  if (Number.isNaN(value)) return { number: '–', unit: '' };
  const row = unitRow(unit);
  const shown = (value - row.zero) / row.scale;
  if (!Number.isFinite(shown)) return { number: shown < 0 ? `${minus}∞` : '∞', unit: row.shown };
  if (row.figures === 'decimals') {
    if (Math.abs(shown) >= 1e9) return { number: powerOfTen(shown, digits), unit: row.shown };
    return { number: pretty(shown.toFixed(Math.max(0, digits - 2))), unit: row.shown };
  }
  const prefix = prefixFor(shown, unit, digits);
  const scaled = shown / 10 ** power(prefix);
  return { number: significant(scaled, digits), unit: prefix + row.shown };
}

/**
 * A value without trailing zeros, to full use of its digits: "6 kHz", "0.1 dB", "4.7 µH". For
 * limits, choices and text put into a field.
 */
export function formatTrimmed(value: number, unit: Unit, digits = 12): string {
  const row = unitRow(unit);
  const shown = (value - row.zero) / row.scale;
  if (!Number.isFinite(shown)) return format(value, unit);
  const prefix = row.figures === 'decimals' ? '' : prefixFor(shown, unit, digits, 1000);
  const scaled = Number((shown / 10 ** power(prefix)).toPrecision(digits));
  const size = Math.abs(scaled);
  const plain =
    size !== 0 && (size < 1e-4 || size >= 1e9)
      ? powerOfTen(scaled, digits, true)
      : pretty(trimZeros(scaled.toFixed(Math.max(0, digits - 1 - decade(scaled)))));
  return join({ number: plain, unit: prefix + row.shown });
}

/**
 * Several values under one prefix and one count of decimals, for a table column. The largest has
 * `digits` significant digits; up to two decimals more keep the smallest readable.
 */
export function formatSame(
  values: readonly number[],
  unit: Unit,
  digits = 3,
): { numbers: string[]; unit: string } {
  const row = unitRow(unit);
  const shown = values.map((value) => (value - row.zero) / row.scale);
  const sizes = shown.map(Math.abs).filter((size) => Number.isFinite(size) && size > 0);
  const largest = Math.max(0, ...sizes);
  const smallest = sizes.length === 0 ? 0 : Math.min(...sizes);
  const levels = row.figures === 'decimals';
  const prefix = levels ? '' : prefixFor(largest, unit, digits);
  const factor = 10 ** power(prefix);
  const wanted = digits - 1 - decade(Number((largest / factor).toPrecision(digits)));
  const needed = 1 - decade(smallest / factor);
  const decimals = levels ? digits - 2 : Math.min(Math.max(wanted, needed), wanted + 2);
  const places = Math.min(100, Math.max(0, decimals));
  const numbers = shown.map((one) => {
    if (Number.isNaN(one)) return '–';
    if (!Number.isFinite(one)) return one < 0 ? `${minus}∞` : '∞';
    const scaled = one / factor;
    return Math.abs(scaled) >= 1e15 ? powerOfTen(scaled, digits) : pretty(scaled.toFixed(places));
  });
  return { numbers, unit: prefix + row.shown };
}

/** A number and unit as one string; degrees of arc and per-metre close up, as SI writes them. */
export function join({ number, unit }: Parts): string {
  if (unit === '') return number;
  return unit === '°' ? number + unit : number + noBreak + unit;
}

function prefixFor(shown: number, unit: Unit, digits: number, kiloFrom?: number): string {
  const row = unitRow(unit);
  const size = Math.abs(Number(shown.toPrecision(digits)));
  if (size === 0 || row.prefixes === '') return '';
  // Widths and audio are said in hertz up to ten thousand: 2400 Hz, not 2.40 kHz.
  if (unit === 'Hz' && size < (kiloFrom ?? 10_000)) return '';
  const taken = ['', ...row.prefixes].sort((a, b) => power(a) - power(b));
  const fitting = taken.filter((prefix) => size * (1 + 1e-12) >= 10 ** power(prefix));
  return fitting.at(-1) ?? taken[0] ?? '';
}

function significant(scaled: number, digits: number): string {
  if (scaled === 0) return '0';
  const rounded = Number(scaled.toPrecision(digits));
  const size = Math.abs(rounded);
  if (size < 1e-4 || size >= 1e7) return powerOfTen(scaled, digits);
  return pretty(rounded.toFixed(Math.max(0, digits - 1 - decade(rounded))));
}

function powerOfTen(value: number, digits: number, trim = false): string {
  const [mantissa = '', exponent = ''] = value.toExponential(Math.max(0, digits - 1)).split('e');
  const raised = exponent.replace('+', '').replace(/./g, (sign) => superscripts[sign] ?? '');
  return `${pretty(trim ? trimZeros(mantissa) : mantissa)}×10${raised}`;
}

/** Proper minus, no "-0", thousands set apart from five digits up. */
function pretty(plain: string): string {
  const [whole = '', fraction] = plain.replace('-', '').split('.');
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, groupGap);
  const number = fraction === undefined ? grouped : `${grouped}.${fraction}`;
  return plain.startsWith('-') && /[1-9]/.test(number) ? minus + number : number;
}

const trimZeros = (plain: string): string =>
  plain.includes('.') ? plain.replace(/\.?0+$/, '') : plain;

const decade = (value: number): number =>
  value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)) + 1e-12);

const power = (prefix: string): number => prefixPower[prefix] ?? 0;

const superscripts: Readonly<Record<string, string>> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
};
