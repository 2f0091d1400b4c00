/** What Mismatch reads: the network as built, the final by hand, the rules. */
export const mismatchReads = {
  ladder: 'output.ladder',
  nominal: 'plan.nominal',
  antenna: 'plan.antenna',
  supply: 'plan.supply',
  rules: 'plan.rules',
  ownLimit: 'plan.ownLimit',
  ownRows: 'plan.ownRows?',
  fundamental: 'transmit.fundamental',
  dcCurrent: 'transmit.dcCurrent',
  collectorLoad: 'transmit.collectorLoad',
  harmonicCurrents: 'transmit.harmonicCurrents',
  outputImpedance: 'transmit.outputImpedance?',
  limitVce: 'transmit.limitVce?',
  marginWanted: 'output.marginWanted',
  verdict: 'output.verdict?',
  swr: 'mismatch.swr',
} as const;
