/** What Speech reads: the voice through the filter, and the noise. */
export const speechReads = {
  side: 'plan.filterSideband?',
  bandwidth: 'filter.noiseBandwidth?',
  audio: 'carrier.audio?',
  speechMean: 'transmit.speechMean',
  ways: 'hear.ways',
  micLow: 'hear.micLow?',
  micHigh: 'hear.micHigh?',
  ratio: 'hear.ratioUsed?',
  more: 'speech.more',
} as const;
