/** The receiver's blocks by name. */
export const blockNames = {
  network: 'Output network',
  front: 'Changeover and preselector',
  third: 'Third amplifier, turned round',
  bandPass: 'Band-pass',
  mixer: 'Mixer',
  first: 'First amplifier',
  filter: 'Crystal filter',
  second: 'Second amplifier',
  detector: 'Product detector',
  preamp: 'Audio preamplifier',
} as const;

export type BlockKey = keyof typeof blockNames;

/** What the order of the blocks depends on. */
export interface FrontForm {
  readonly scheme: string;
  readonly thirdServes: string;
  /** dB; null where the rig has no third amplifier. */
  readonly thirdGain: number | null;
}

const behind: readonly BlockKey[] = ['first', 'filter', 'second', 'detector', 'preamp'];
const direct: readonly BlockKey[] = ['network', 'front', ...behind];
const converts: readonly BlockKey[] = ['network', 'front', 'bandPass', 'mixer', ...behind];
const withThird: readonly BlockKey[] = [
  'network',
  'front',
  'third',
  'bandPass',
  'mixer',
  ...behind,
];

/** The blocks in the signal's order. */
export function blocksOf({ scheme, thirdServes, thirdGain }: FrontForm): readonly BlockKey[] {
  if (scheme !== 'conversion') return direct;
  return thirdServes === 'yes' && thirdGain !== null ? withThird : converts;
}
