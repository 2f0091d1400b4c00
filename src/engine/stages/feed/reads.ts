/** What Feed line reads. The antenna's resistance only where Antenna works it out. */
export const feedReads = {
  frequency: 'plan.nominal',
  kind: 'antenna.kind',
  same: 'antenna.far',
  radiation: 'antenna.radiation?',
  losses: 'antenna.losses?',
  line: 'feed.line',
  length: 'feed.length',
  swr: 'feed.swr?',
  farLine: 'feed.farLine',
  farLength: 'feed.farLength',
  farSwr: 'feed.farSwr?',
} as const;
