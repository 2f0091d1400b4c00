/** How a small stage's base gets its current. */
export const biasForms = {
  divider: 'Two resistors from the supply',
  pair: 'Two resistors from the collector',
  single: 'One resistor from the collector',
} as const;

/** What of a two-way amplifier's sleeping half stays connected. */
export const asleepWays = {
  all: 'All its parts stay on the line',
  transistor: 'Only its transistor stays',
  nothing: 'It is switched off the line',
} as const;
