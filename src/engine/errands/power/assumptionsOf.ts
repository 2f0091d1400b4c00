import type { Assumption } from './powerAnswer.ts';
import type { PowerSeen } from './seen.ts';

/** What stands round the transistor in the sum: for people to compare with what they built. */
export const assumptionsOf = (seen: PowerSeen): readonly Assumption[] => [
  { what: 'Emitter resistor', value: seen.ballast, unit: 'Ω' },
  { what: 'Inductance from emitter to ground', value: seen.lead, unit: 'H' },
  { what: 'Resistor from base to ground', value: seen.shunt, unit: 'Ω' },
  { what: 'Resistance of the bias source', value: seen.biasSource, unit: 'Ω' },
  { what: 'Resistance of the collector’s winding', value: seen.winding, unit: 'Ω' },
  { what: 'Inductance of the collector’s winding', value: seen.feedUsed, unit: 'H' },
  { what: 'Stray capacitance at the collector', value: seen.stray, unit: 'F' },
  { what: 'Driver’s source resistance, at every harmonic', value: seen.driverOutput, unit: 'Ω' },
  { what: 'Inductance in series with it', value: seen.driverUsed, unit: 'H' },
];
