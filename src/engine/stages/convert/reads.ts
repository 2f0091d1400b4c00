/** What Conversion reads: the plan, the carrier and its sideband, and its own entries. */
export const convertReads = {
  scheme: 'plan.scheme',
  side: 'plan.side',
  sideband: 'plan.sideband',
  nominal: 'plan.nominal?',
  filterFrequency: 'plan.filterFrequency?',
  carrier: 'carrier.frequency?',
  made: 'carrier.sideband?',
  oscillatorGiven: 'convert.oscillatorGiven?',
  span: 'convert.span',
  oscillatorLevel: 'convert.oscillatorLevel',
  signalLevel: 'convert.signalLevel',
  mixerLoss: 'convert.mixerLoss',
  oscillatorIsolation: 'convert.oscillatorIsolation',
  signalIsolation: 'convert.signalIsolation',
} as const;
