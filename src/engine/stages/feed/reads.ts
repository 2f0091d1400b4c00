/** What Feed line reads. The antenna's resistance only where Antenna works it out. */
export const feedReads = {
  frequency: 'plan.nominal',
  kind: 'antenna.kind',
  same: 'antenna.far',
  radiation: 'antenna.radiation?',
  losses: 'antenna.losses?',
  line: 'feed.line',
  knownLoss: 'feed.knownLoss',
  length: 'feed.length',
  swr: 'feed.swr?',
  farLine: 'feed.farLine',
  farKnownLoss: 'feed.farKnownLoss',
  farLength: 'feed.farLength',
  farSwr: 'feed.farSwr?',
} as const;
