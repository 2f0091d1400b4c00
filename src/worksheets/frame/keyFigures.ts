/** The figures that the drawing of the rig shows under each stage: two at most. */
export const keyFigures: Readonly<Record<string, readonly string[]>> = {
  plan: ['plan.nominal', 'plan.pepLevel'],
  quartz: ['quartz.lm', 'quartz.c0'],
  filter: ['filter.width3', 'filter.loss'],
  carrier: ['carrier.frequency', 'carrier.suppression1k'],
  transmit: ['transmit.micGain', 'transmit.collectorLoad'],
  output: ['output.worstMargin', 'output.pepAntenna'],
  windings: ['windings.leastQ', 'windings.wireTotal'],
  receive: ['receive.noiseFigure', 'receive.noiseRise'],
  path: ['path.received', 'path.snr'],
  bench: [],
};
