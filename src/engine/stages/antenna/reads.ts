/** What Antenna reads: the frequency, and its own entries. */
export const antennaReads = {
  frequency: 'plan.nominal',
  kind: 'antenna.kind',
  height: 'antenna.height',
  off: 'antenna.off',
  length: 'antenna.length',
  coilQ: 'antenna.coilQ',
  wire: 'antenna.wire',
  groundLoss: 'antenna.groundLoss',
  matching: 'antenna.matching',
  ground: 'antenna.ground',
} as const;
