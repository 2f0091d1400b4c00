import { cosinePulse } from '../../circuit/conduction.ts';
import { transistors } from '../../data/devices.ts';
import type { Problem } from '../../fields/stage.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';
import type { FinalFigures } from './finalFigures.ts';
import { type LimitKey, limitKeys } from './limitRows.ts';
import type { FinalSeen } from './seen.ts';
import { togetherOf } from './together.ts';

/** What the final can't do, and what would. */
export function powerCautions(
  seen: FinalSeen,
  final: FinalFigures,
  stage: { readonly conductionAngle: number; readonly peakCurrent: number },
  limits: readonly { readonly outcome: string | null; readonly stands: string | null }[],
): Problem[] {
  const problems: Problem[] = [];
  const name = transistors[seen.finalDevice].name;
  const failing = limitKeys.filter((_, i) => limits[i]?.outcome === 'fails');
  for (const key of failing) {
    const stands = limits[limitKeys.indexOf(key)]?.stands ?? '';
    problems.push(refusal(key, stands, name, seen, final, stage));
  }
  // Does the stage still follow weak syllables?
  if (stage.conductionAngle < Math.PI) {
    problems.push({
      field: 'transmit.angle',
      weight: 'warns',
      says: 'In class C weak syllables don’t open the final at all: speech comes out torn.',
      try: 'Class AB: 20 mA or so of standing current.',
    });
  }
  if (seen.finalForm === 'parallel' && seen.finalDevices === 1) {
    problems.push({
      field: 'transmit.finalDevices',
      weight: 'warns',
      says: 'One by itself has nobody to share with.',
      try: 'Two or more side by side, or “One transistor”.',
    });
  }
  if (seen.junctionAllowed > final.limitJunction) {
    problems.push({
      field: 'transmit.junctionAllowed',
      weight: 'warns',
      says: `The data sheet ends at ${format(final.limitJunction, '°C', 2)}.`,
      try: 'Stay 20 °C or more below it.',
    });
  }
  if (seen.cooling === 'sink' && final.toCase === null) {
    problems.push({
      field: 'transmit.cooling',
      weight: 'warns',
      says: `The case of the ${name} isn’t meant for a heat sink, so none is reckoned with.`,
      try: 'A transistor in a TO-126 or TO-220 case.',
    });
  }
  return problems;
}

function refusal(
  key: LimitKey,
  stands: string,
  name: string,
  seen: FinalSeen,
  final: FinalFigures,
  { conductionAngle, peakCurrent }: { conductionAngle: number; peakCurrent: number },
): Problem {
  const [value, limit] = stands.split(' of ');
  const fundamental = Math.min(1, cosinePulse(conductionAngle, 1)) * final.limitIc;
  const { sides, gang } = togetherOf(seen);
  const most =
    (sides * gang * fundamental * (seen.supply - seen.saturation)) /
    2 /
    powerRatioOfDb(seen.network);
  const supply = seen.saturation + (seen.supply - seen.saturation) * (seen.pep / most);
  const answers: Record<LimitKey, Problem> = {
    voltage: {
      field: 'plan.supply',
      weight: 'stops',
      says: `The collector swings to twice the supply, ${value}; the ${name} stands ${limit}.`,
      try: 'A lower supply, or a transistor for a higher voltage.',
    },
    antennaOff: {
      field: 'plan.supply',
      weight: 'warns',
      says: `With the antenna off, the collector may reach four times the supply, ${value}; the ${name} stands ${limit}.`,
      try: 'Never transmit without a load; a Zener diode across the final, or a transistor for a higher voltage.',
    },
    current: {
      field: 'plan.pep',
      weight: 'stops',
      says: `The collector current would peak at ${value}; the ${name} takes ${limit}.`,
      try: `At most ${format(most, 'W', 2)} from this supply; or about ${format(supply, 'V', 2)} for this power; or ${Math.ceil(peakCurrent / final.limitIc)} in parallel, or a larger transistor.`,
    },
    speech: {
      field: 'transmit.sink',
      weight: 'warns',
      says: `On speech the junction would get to ${value}; ${limit} is allowed.`,
      try: 'A larger heat sink, see Cooling; or less power.',
    },
    tone: {
      field: 'transmit.sink',
      weight: 'warns',
      says: `With the key down the junction would get to ${value}; ${limit} is allowed.`,
      try: 'A heat sink, see Cooling; or keep tests to a few seconds.',
    },
    frequency: {
      field: 'transmit.finalDevice',
      weight: 'warns',
      says: `The ${name} is slow here: ten times the frequency is ${value}, its fT ${limit}.`,
      try: 'Count on less gain, or take a faster transistor.',
    },
    gain: {
      field: 'transmit.finalGain',
      weight: 'warns',
      says: `So much power gain asks for a current gain of ${value}; the ${name} has ${limit} at this frequency.`,
      try: 'Reckon with less gain, or take a faster transistor.',
    },
    driverHeat: {
      field: 'transmit.driverBridged',
      weight: 'warns',
      says: `The driver’s junction would get to ${value}; ${limit} is allowed.`,
      try: 'Less standing current (a larger emitter resistor) with a higher load, or a larger transistor.',
    },
    driverVoltage: {
      field: 'transmit.driverDevice',
      weight: 'warns',
      says: `The driver’s collector swings to twice the supply, ${value}; it stands ${limit}.`,
      try: 'Feed the driver from a lower voltage, or take another transistor.',
    },
  };
  return answers[key];
}
