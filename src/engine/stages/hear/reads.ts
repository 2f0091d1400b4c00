/** What Hear reads. Without Path it takes the ratio that is typed, or no noise. */
export const hearReads = {
  side: 'plan.filterSideband?',
  pathRatio: 'path.snr?',
  route: 'path.route',
  speechMean: 'transmit.speechMean',
  noise: 'hear.noise',
  ratio: 'hear.ratio?',
  fading: 'hear.fading',
  offTune: 'hear.offTune',
} as const;
