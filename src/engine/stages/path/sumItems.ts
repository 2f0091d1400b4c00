/** Names of the lines of the sum. */
export const sumItems = {
  power: 'The rig’s power',
  lineHere: 'Feed line here',
  antennaHere: 'Antenna here',
  spreading: 'Spreading',
  absorption: 'Absorption',
  touching: 'Ground between hops',
  groundRay: 'Ray by way of the ground',
  doubling: 'Twice the field, held in both gains',
  surface: 'Lost to the ground',
  antennaThere: 'Antenna there',
  lineThere: 'Feed line there',
  noise: 'Noise there',
  farPower: 'Power there',
  heardNoise: 'Noise here',
  snr: 'Signal over noise',
} as const;
