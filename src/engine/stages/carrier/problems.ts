import type { Problem, Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { carrierFields } from './fields.ts';
import { type Oscillator, oscillatorOf } from './oscillator.ts';
import { MOST, type OwnCrystal } from './ownCrystal.ts';
import { facingEdge, SKIRT, type Skirt } from './placement.ts';
import type { CarrierSeen } from './seen.ts';

interface Found {
  /** Where the rule puts the carrier, near the filter or not, Hz. */
  readonly placed: number | null;
  readonly skirt: Skirt;
  readonly oscillator: Oscillator;
  readonly own: OwnCrystal;
  readonly results: Work<typeof carrierFields>['results'];
}

const hertz = (f: number) => format(f, 'Hz', 7);
const apart = (f: number) => format(f, 'Hz', 3);

/** What is wrong with a carrier, or to be watched, and what would help. */
export function problems(seen: CarrierSeen, found: Found): Problem[] {
  const { frequency } = found.results;
  if (frequency === null) return [nowhere(seen, found)];
  return [
    ...beyondReach(seen, found, frequency),
    ...onTheSkirt(seen, found),
    ...inTheOscillator(seen, found),
  ];
}

/** Why the carrier has no place at all. */
function nowhere(seen: CarrierSeen, { placed, skirt }: Found): Problem {
  if (seen.rule === 'attenuation') {
    return {
      field: 'carrier.attenuationGiven',
      weight: 'stops',
      says: `The filter’s skirt doesn’t reach ${format(seen.attenuationGiven, 'dB', 3)} within ${apart(SKIRT)} of its edge.`,
      try: 'Ask for less, or use more crystals.',
    };
  }
  if (placed === null) {
    return {
      field: 'carrier.frequencyGiven',
      weight: 'stops',
      says: 'The carrier is to be placed by its frequency, and none is given.',
      try: `The passband’s edge is at ${hertz(facingEdge(skirt))}.`,
    };
  }
  return {
    field: 'carrier.frequencyGiven',
    weight: 'stops',
    says: `${hertz(placed)} lies ${apart(Math.abs(placed - facingEdge(skirt)))} from the filter’s edge at ${hertz(facingEdge(skirt))}.`,
    try: 'The carrier belongs a few hundred hertz outside that edge.',
  };
}

/** The oscillator can't be pulled there. */
function beyondReach(seen: CarrierSeen, { oscillator, own, skirt }: Found, f: number): Problem[] {
  const { low, high, bare, x } = oscillator;
  if (low === null || high === null || bare === null) {
    return [
      {
        field: 'carrier.crystals',
        weight: 'stops',
        says: `A crystal of ${format(x.rm, 'Ω', 3)} and ${format(x.c0, 'F', 2)} can’t be pulled in this oscillator: its loss outweighs its reactance.`,
        try: 'A crystal with less loss, or a holder with less capacitance.',
      },
    ];
  }
  if (f > high) {
    return [
      {
        field: fieldOfRule(seen),
        weight: 'stops',
        says: `The carrier would have to be at ${hertz(f)}; this oscillator reaches ${hertz(high)} with 2 pF in series.`,
        try: [
          ...moreCrystals(seen, own, f),
          'What else helps: a crystal with a higher fs or less holder capacitance,',
          skirt.way === 1 ? 'the upper sideband, or a narrower filter.' : 'or another filter.',
        ].join(' '),
      },
    ];
  }
  if (f < low) {
    return [
      {
        field: fieldOfRule(seen),
        weight: 'stops',
        says: `The carrier would have to be at ${hertz(f)}; this oscillator reaches down to ${hertz(low)} with the largest coil that leaves the crystal in charge.`,
        try: `Larger C1 and C2, now ${format(seen.c1, 'F', 3)} and ${format(seen.c2, 'F', 3)}, let it start lower (${hertz(bare)} without a coil); or a crystal with a lower fs.`,
      },
    ];
  }
  return [];
}

/** Says whether another crystal side by side would reach. */
function moreCrystals(seen: CarrierSeen, own: OwnCrystal, f: number): string[] {
  if (own.count >= MOST) return [];
  const more = oscillatorOf(seen, own, own.count + 1);
  if (more.high === null || more.low === null || f > more.high || f < more.low) return [];
  return [`${own.count + 1} crystals in parallel would reach it.`];
}

/** What the ear and the other sideband say. */
function onTheSkirt(seen: CarrierSeen, { skirt, results }: Found): Problem[] {
  const { attenuation, audioLow6, sideband, suppression300 } = results;
  const found: Problem[] = [];
  if (sideband !== null && sideband !== seen.wantedSideband) {
    found.push({
      field: fieldOfRule(seen),
      weight: 'stops',
      says: `The other sideband comes out: the carrier must lie ${skirt.way === 1 ? 'above' : 'below'} the passband, whose edge is at ${hertz(facingEdge(skirt))}.`,
      try: 'Move the carrier to the other side, or change the sideband on the Plan.',
    });
  } else if (attenuation !== null && attenuation < 10) {
    found.push({
      field: fieldOfRule(seen),
      weight: 'warns',
      says: `The filter takes only ${format(attenuation, 'dB', 3)} off the carrier, and much of the other sideband comes out with it.`,
      try: 'Move it further out; 15 to 25 dB is usual.',
    });
  }
  if (audioLow6 !== null && audioLow6 > 400) {
    found.push({
      field: fieldOfRule(seen),
      weight: 'warns',
      says: `Speech starts at ${apart(audioLow6)}: thin and nasal, though it cuts through noise.`,
      try: 'Move the carrier nearer, or use more crystals for a steeper skirt.',
    });
  }
  if (suppression300 !== null && suppression300 < 20 && sideband === seen.wantedSideband) {
    found.push({
      field: fieldOfRule(seen),
      weight: 'warns',
      says: `A 300 Hz tone is only ${format(suppression300, 'dB', 3)} weaker on the other side of the carrier.`,
      try:
        skirt.way === -1
          ? 'The lower skirt of such a filter is the shallow one. More crystals, or the carrier further out.'
          : 'More crystals, or the carrier further out.',
    });
  }
  return found;
}

/** Parts and starting. */
function inTheOscillator(seen: CarrierSeen, { results, oscillator, own }: Found): Problem[] {
  const { startMargin, seriesC, hzPerPf, resistance } = results;
  const found: Problem[] = [];
  if (startMargin !== null && resistance !== null && startMargin < 3) {
    found.push({
      field: 'carrier.standing',
      weight: 'warns',
      says: `The transistor gives ${format(startMargin, '1', 2)} times the crystal’s ${format(resistance, 'Ω', 3)}; below 3 it may not start.`,
      try: `More standing current, or smaller C1 and C2 (now ${format(seen.c1, 'F', 3)} and ${format(seen.c2, 'F', 3)}).`,
    });
  }
  if (seriesC !== null && hzPerPf !== null && seriesC < 5e-12) {
    found.push({
      field: 'carrier.stray',
      weight: 'warns',
      says: `With ${format(seriesC, 'F', 2)} in series each picofarad of wiring moves the carrier by ${format(hzPerPf * 1e-12, 'Hz', 2)}.`,
      try:
        oscillator.x.c0 > 0 && own.count < MOST
          ? `${own.count === 1 ? 'Two' : 'Three'} crystals in parallel need less pulling.`
          : 'Short leads, and a rigid trimmer.',
    });
  }
  return found;
}

const fieldOfRule = ({ rule }: CarrierSeen) => `carrier.${rule}Given`;
