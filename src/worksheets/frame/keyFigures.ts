/** One figure under a stage of the drawing: its path, and a word where the unit alone is not enough. */
export interface KeyFigure {
  readonly path: string;
  readonly word?: string;
}

/** The figures that the drawing of the rig shows under each stage: two at most. */
export const keyFigures: Readonly<Record<string, readonly KeyFigure[]>> = {
  plan: [{ path: 'plan.nominal' }, { path: 'plan.pepLevel' }],
  quartz: [
    { path: 'quartz.lm', word: 'Lm' },
    { path: 'quartz.c0', word: 'C0' },
  ],
  filter: [{ path: 'filter.width3' }, { path: 'filter.loss', word: 'loss' }],
  carrier: [{ path: 'carrier.frequency' }, { path: 'carrier.suppression1k', word: 'other' }],
  transmit: [
    { path: 'transmit.micGain', word: 'mic' },
    { path: 'transmit.collectorLoad', word: 'load' },
  ],
  output: [{ path: 'output.pepAntenna' }, { path: 'output.worstMargin', word: 'margin' }],
  windings: [
    { path: 'windings.wireTotal', word: 'wire' },
    { path: 'windings.leastQ', word: 'Q' },
  ],
  receive: [
    { path: 'receive.noiseFigure', word: 'NF' },
    { path: 'receive.noiseRise', word: 'rise' },
  ],
  path: [{ path: 'path.report' }, { path: 'path.snr', word: 'S/N' }],
  bench: [{ path: 'bench.outputVpp' }],
};
