/** A kind of feed line. Its loss is `steadyLoss` + `rootLoss`·√f + `linearLoss`·f, f in MHz, for each hundred metres. */
export interface FeedLine {
  readonly name: string;
  /** Ω */
  readonly impedance: number;
  /** In a core so thin that the current fills it at every frequency: dB over 100 m. */
  readonly steadyLoss: number;
  /** In the conductors' skin: dB over 100 m at 1 MHz. */
  readonly rootLoss: number;
  /** In the insulation: dB over 100 m at 1 MHz. */
  readonly linearLoss: number;
  readonly source: string;
}

export type FeedLineKey = 'rg174' | 'rg58' | 'rg8x' | 'rg213' | 'ribbon' | 'window' | 'open';

const sheets = 'fitted to makers’ data sheets from 1 to 1000 MHz, typical (from memory)';
const handbook =
  'fitted to the handbook table of generic lines, ARRL Antenna Book, at 1, 10 and 100 MHz (from memory)';

/** Feed lines, dry and new. From one maker to the next a tenth more or less. */
export const feedLines: Readonly<Record<FeedLineKey, FeedLine>> = {
  rg174: {
    name: 'RG-174, 3 mm coax',
    impedance: 50,
    steadyLoss: 4.19,
    rootLoss: 1.98,
    linearLoss: 0.0365,
    source: handbook,
  },
  rg58: {
    name: 'RG-58, 5 mm coax',
    impedance: 50,
    steadyLoss: 0,
    rootLoss: 1.38,
    linearLoss: 0.0227,
    source: sheets,
  },
  rg8x: {
    name: 'RG-8X kind, 6 mm foam coax',
    impedance: 50,
    steadyLoss: 0,
    rootLoss: 0.93,
    linearLoss: 0.0105,
    source: handbook,
  },
  rg213: {
    name: 'RG-213, 10 mm coax',
    impedance: 50,
    steadyLoss: 0,
    rootLoss: 0.61,
    linearLoss: 0.007,
    source: sheets,
  },
  ribbon: {
    name: '300 Ω ribbon',
    impedance: 300,
    steadyLoss: 0,
    rootLoss: 0.29,
    linearLoss: 0.0065,
    source: handbook,
  },
  window: {
    name: '450 Ω line with windows',
    impedance: 450,
    steadyLoss: 0,
    rootLoss: 0.076,
    linearLoss: 0.0021,
    source: handbook,
  },
  open: {
    name: '600 Ω open wire',
    impedance: 600,
    steadyLoss: 0,
    rootLoss: 0.0608,
    linearLoss: 0.0005,
    source: handbook,
  },
};

/**
 * Loss of a matched line, dB.
 *
 * @param length m
 * @param frequency Hz, 1 to 100 MHz
 */
export function matchedLoss(line: FeedLine, length: number, frequency: number): number {
  const megahertz = frequency / 1e6;
  const { steadyLoss, rootLoss, linearLoss } = line;
  return (length / 100) * (steadyLoss + rootLoss * Math.sqrt(megahertz) + linearLoss * megahertz);
}
