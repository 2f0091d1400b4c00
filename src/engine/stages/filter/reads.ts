/** What the Filter reads: the crystal, and its own entries. */
export const filterReads = {
  fs: 'quartz.fs',
  lm: 'quartz.lm',
  rm: 'quartz.rm',
  c0: 'quartz.c0',
  qu: 'quartz.qu',
  crystals: 'filter.crystals',
  bandwidth: 'filter.bandwidth',
  family: 'filter.family',
  ripple: 'filter.ripple',
  fitted: 'filter.fitted',
  capacitorQ: 'filter.capacitorQ',
  stray: 'filter.stray',
  sourceResistance: 'filter.sourceResistance?',
  loadResistance: 'filter.loadResistance?',
} as const;
