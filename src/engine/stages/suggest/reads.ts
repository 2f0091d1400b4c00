/** What Suggest reads: what it is to look through. */
export const suggestReads = {
  collectorLoad: 'transmit.collectorLoad',
  antenna: 'plan.antenna',
  prefer: 'suggest.prefer',
  mostParts: 'suggest.mostParts',
  matchBy: 'suggest.matchBy',
  halfWave: 'suggest.halfWave',
  prototypes: 'suggest.prototypes',
  traps: 'suggest.traps',
  elliptic: 'suggest.elliptic',
  fitLeast: 'suggest.fitLeast',
  lossMost: 'suggest.lossMost',
  powerLeast: 'suggest.powerLeast',
} as const;
