/** What Yield reads: the filter and carrier as they are, its own spreads and mask. */
export const yieldReads = {
  ladder: 'filter.ladder',
  width: 'filter.width3',
  ripple: 'filter.rippleFound',
  loss: 'filter.loss',
  carrier: 'carrier.attenuation?',
  opposite: 'carrier.suppressionWorst?',
  widthLeast: 'yield.widthLeast?',
  widthMost: 'yield.widthMost?',
  rippleMost: 'yield.rippleMost?',
  lossMost: 'yield.lossMost?',
  carrierLeast: 'yield.carrierLeast?',
  oppositeLeast: 'yield.oppositeLeast?',
  spread: 'yield.spread',
  frequencyShape: 'yield.frequencyShape',
  measuring: 'yield.measuring',
  builds: 'yield.builds',
} as const;
