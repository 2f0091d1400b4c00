/** A sound of speech as a synthesiser sees it. */
export interface Phone {
  /** First three formants, Hz. */
  readonly formants: readonly [number, number, number];
  /** How strong the voice, the breath through the throat and the hiss at the mouth are; 0 to 1. */
  readonly voice: number;
  readonly breath: number;
  readonly hiss: number;
  /** Middle and width of the hiss, Hz. */
  readonly hissAt: number;
  readonly hissWidth: number;
  /** s */
  readonly length: number;
}

const none = { voice: 0, breath: 0, hiss: 0, hissAt: 4000, hissWidth: 2000 };

const vowel = (f1: number, f2: number, f3: number, length = 0.13): Phone => ({
  ...none,
  formants: [f1, f2, f3],
  voice: 1,
  length,
});

/**
 * Vowels: formants of men's voices.
 * @source G. E. Peterson & H. L. Barney, J. Acoust. Soc. Am. 24, 1952, table II
 */
export const vowels: readonly Phone[] = [
  vowel(270, 2290, 3010, 0.14),
  vowel(390, 1990, 2550, 0.09),
  vowel(530, 1840, 2480, 0.11),
  vowel(660, 1720, 2410, 0.15),
  vowel(730, 1090, 2440, 0.16),
  vowel(570, 840, 2410, 0.16),
  vowel(440, 1020, 2240, 0.1),
  vowel(300, 870, 2240, 0.14),
  vowel(640, 1190, 2390, 0.1),
  vowel(490, 1350, 1690, 0.14),
];

const sonorant = (f1: number, f2: number, f3: number, voice: number, length: number): Phone => ({
  ...none,
  formants: [f1, f2, f3],
  voice,
  length,
});

const hissing = (
  f2: number,
  hiss: number,
  hissAt: number,
  hissWidth: number,
  voice: number,
  length: number,
): Phone => ({
  ...none,
  formants: [320, f2, 2600],
  hiss,
  hissAt,
  hissWidth,
  voice,
  length,
});

/** A stop: silence, then a short burst where the tongue lets go, then perhaps some breath. */
const stop = (f2: number, hissAt: number, hissWidth: number, voiced: boolean): readonly Phone[] => {
  const formants = [300, f2, 2500] as const;
  const closed = { ...none, formants, voice: voiced ? 0.08 : 0, length: voiced ? 0.05 : 0.07 };
  const burst = { ...none, formants, hiss: 0.7, hissAt, hissWidth, length: 0.012 };
  const after = { ...none, formants, breath: 0.5, length: 0.03 };
  return voiced ? [closed, burst] : [closed, burst, after];
};

/** Consonants: places and widths of usual textbooks, from memory. */
export const consonants: readonly (readonly Phone[])[] = [
  stop(900, 1100, 1400, false),
  stop(1800, 4400, 2500, false),
  stop(1900, 2100, 1200, false),
  stop(900, 900, 1200, true),
  stop(1700, 4000, 2500, true),
  stop(1900, 2000, 1200, true),
  [hissing(1700, 0.75, 6200, 2600, 0, 0.1)],
  [hissing(1800, 0.8, 3300, 1600, 0, 0.1)],
  [hissing(1200, 0.2, 5200, 6000, 0, 0.09)],
  [hissing(1700, 0.4, 6000, 2600, 0.35, 0.07)],
  [hissing(1200, 0.12, 4500, 6000, 0.4, 0.06)],
  [sonorant(250, 1100, 2200, 0.5, 0.07)],
  [sonorant(260, 1600, 2500, 0.5, 0.065)],
  [sonorant(360, 1100, 2700, 0.7, 0.06)],
  [sonorant(410, 1150, 1550, 0.7, 0.065)],
  [sonorant(300, 680, 2200, 0.7, 0.06)],
  [sonorant(280, 2200, 2950, 0.7, 0.055)],
  [{ ...none, formants: [500, 1500, 2500], breath: 0.6, length: 0.06 }],
];
