import type { PathSeen } from './seen.ts';
import type { sumItems } from './sumItems.ts';

/** A line of the sum from the rig's power to what is left over the noise. */
export type SumItem = keyof typeof sumItems;

const way: Readonly<Record<PathSeen['route'], readonly SumItem[]>> = {
  skyWave: ['spreading', 'absorption', 'touching'],
  lineOfSight: ['spreading'],
  twoRay: ['spreading', 'groundRay'],
  groundWave: ['spreading', 'doubling', 'surface'],
};

/** Lines between the rig here and the receiver there, in the order in which the signal meets them. */
export const itemsOf = (route: PathSeen['route']): readonly SumItem[] => [
  'power',
  'lineHere',
  'antennaHere',
  ...way[route],
  'antennaThere',
  'lineThere',
];

/** The same from the rig there to the receiver here. */
export const itemsBack = (route: PathSeen['route']): readonly SumItem[] => [
  'farPower',
  'lineThere',
  'antennaThere',
  ...way[route],
  'antennaHere',
  'lineHere',
];

/** What each line adds, dB; the first is the power itself, dBm. */
export type Adds = Partial<Record<SumItem, number | null>>;

/** A line with what it adds in dB, and the level after it in dBm. */
export interface SumRow {
  readonly item: SumItem;
  readonly adds: number | null;
  readonly level: number | null;
}

/**
 * The sum, line by line, with the level after each; then the noise, and what is left over it.
 *
 * @param items in the order in which the signal meets them; the first is a power
 * @param at which end it is heard, as the line of its noise is called
 * @param noise dBm; null leaves the last two out
 */
export function sumRows(
  items: readonly SumItem[],
  adds: Adds,
  at: 'noise' | 'heardNoise',
  noise: number | null,
): SumRow[] {
  let level = 0;
  const rows: SumRow[] = items.map((item, index) => {
    const by = adds[item] ?? 0;
    level += by;
    return { item, adds: index === 0 ? null : by, level };
  });
  if (noise === null) return rows;
  return [
    ...rows,
    { item: at, adds: null, level: noise },
    { item: 'snr', adds: level - noise, level: null },
  ];
}
