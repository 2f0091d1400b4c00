import { type Digits, digits } from './digits.ts';

/** A literal taken apart: sign, number, power of ten, and the letters after it. */
export interface Pieces {
  readonly sign: string;
  readonly number: Digits;
  /** The run of digits as typed, for messages. */
  readonly run: string;
  readonly power: number;
  /** Prefix and unit as typed, without spaces. */
  readonly letters: string;
}

// A letter where the point would stand: 4u7, 8R2, 7M16, 12V5. Not e, which is a power of ten.
const point = /^([+-]?)(\d*)((?![eE])\p{L})(\d[\d']*) ?(\D*)$/u;
const plain = /^([+-]?) ?([.,]?\d+(?:[.,' ]\d+)*[.,]?)(?:[eE]([+-]?\d{1,4})(?![\d.,]))? ?(.*)$/u;

/** Takes a tidied text apart, or null if it doesn't begin as a literal does. */
export function pieces(text: string): Pieces | null {
  const infix = point.exec(text);
  if (infix) {
    const [, sign = '', whole = '', letter = '', fraction = '', rest = ''] = infix;
    // Without digits before it only a prefix or R is a point: p47, R47.
    if (whole !== '' || /[fpnuUµmkKMGR]/.test(letter)) {
      const number = `${whole || '0'}.${fraction.replace(/'/g, '')}`;
      const letters = letter + rest.replace(/ /g, '');
      return { sign, number: { kind: 'decimal', text: number }, run: number, power: 0, letters };
    }
  }
  const parts = plain.exec(text);
  if (!parts) return null;
  const [, sign = '', run = '', exponent = '0', tail = ''] = parts;
  const letters = tail.replace(/ /g, '');
  return { sign, number: digits(run), run, power: Number(exponent), letters };
}
