/** How operating and intermediate frequency and oscillator belong together. */
export type Way =
  /** Operating = oscillator + intermediate. */
  | 'adds'
  /** Operating = intermediate − oscillator. */
  | 'takes'
  /** Operating = oscillator − intermediate: turns the sideband round. */
  | 'turns';

/** The way that follows from what is asked for and from which frequency is the higher. */
export function wayOf(side: 'difference' | 'sum', nominal: number, intermediate: number): Way {
  if (side === 'sum') return 'turns';
  return nominal >= intermediate ? 'adds' : 'takes';
}

/** The oscillator for a suppressed carrier at `nominal` from one at `carrier`, Hz. */
export function oscillatorFor(way: Way, nominal: number, carrier: number): number {
  if (way === 'adds') return nominal - carrier;
  return way === 'takes' ? carrier - nominal : nominal + carrier;
}

/** What the mixer makes of a signal on the way to the antenna, Hz; negative where there is none. */
export function mixed(way: Way, oscillator: number, signal: number): number {
  if (way === 'adds') return oscillator + signal;
  return way === 'takes' ? signal - oscillator : oscillator - signal;
}

/** The other signal that the same oscillator brings to the intermediate frequency, Hz. */
export function imageOf(way: Way, oscillator: number, intermediate: number): number {
  return way === 'adds' ? Math.abs(oscillator - intermediate) : oscillator + intermediate;
}

/** Where twice the signal and twice the oscillator make the intermediate frequency, Hz. */
export function halfwayOf(way: Way, oscillator: number, intermediate: number): number {
  if (way === 'adds') return oscillator + intermediate / 2;
  return Math.abs(oscillator - intermediate / 2);
}

/** The sum as a sentence's part. */
export const waySays: Readonly<Record<Way, string>> = {
  adds: 'Conversion oscillator plus filter: the sideband stays as it is.',
  takes: 'Filter less conversion oscillator: the sideband stays as it is.',
  turns: 'Conversion oscillator less filter: the sideband is turned round.',
};
