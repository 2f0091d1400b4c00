import type { LadderForWidth } from '../../circuit/ladderForWidth.ts';
import { LEAST_GAIN } from '../../circuit/passband.ts';
import type { Problem, Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { filterFields } from './fields.ts';
import type { FilterSeen } from './seen.ts';

type Results = Work<typeof filterFields>['results'];

const hertz = (f: number) => format(f, 'Hz', 4);
const farads = (c: number) => format(c, 'F', 2);

/** Below this a coupling capacitor is no better known than the stray beside it, F. */
const DOUBTFUL = 3e-12;

/** What there is no design for: then there are no results. */
export function notMade({ family, form }: FilterSeen): Problem[] {
  if (form !== 'shunt' || family !== 'doubled') return [];
  return [
    {
      field: 'filter.family',
      weight: 'stops',
      says: 'Doubled ends are for crystals in series: to ground each end would take half a crystal.',
      try: 'Another family, or crystals in series.',
    },
  ];
}

/** What no soldering iron can make: then there are no results. */
export function impossible({ stray }: FilterSeen, made: LadderForWidth): Problem[] {
  const least = Math.min(...made.ladder.coupling);
  if (least > 0) return [];
  return [
    {
      field: 'filter.stray',
      weight: 'stops',
      says: `${farads(stray)} of stray is more than a junction needs altogether (${farads(least + stray)}).`,
      try: 'Less stray, a narrower filter, or crystals with less holder capacitance.',
    },
  ];
}

/** Why this is no filter: next to nothing comes through, or as much gets past it. */
export function nothingThrough(seen: FilterSeen, gain: number, out: boolean): Problem[] {
  if (gain >= LEAST_GAIN) {
    if (out) return [];
    return [
      {
        field:
          seen.leakageDb === null && seen.leakage !== null ? 'filter.leakage' : 'filter.leakageDb',
        weight: 'stops',
        says: 'No passband stands out: what gets past the filter is as strong as what comes through it.',
        try: 'Less leakage, or ends nearer to what the filter is designed for.',
      },
    ];
  }
  const chosen = seen.chosen !== null;
  return [
    {
      field: chosen ? 'filter.chosen' : 'filter.sourceResistance',
      weight: 'stops',
      says: `Next to nothing comes through: ${format(-gain, 'dB', 3)} are lost at the best point. That is no filter.`,
      try: chosen
        ? 'These crystals lie too far apart for one filter: see the Bag.'
        : 'Ends nearer to what the filter is designed for, parts nearer to the exact ones, or crystals with more Q.',
    },
  ];
}

/** What can be worked but should be looked at, the gravest first. */
export function problems(seen: FilterSeen, made: LadderForWidth, results: Results): Problem[] {
  return [
    ...widthProblems(seen, made),
    ...lossProblems(seen, made, results),
    ...partProblems(seen, made),
    ...endProblems(seen, results),
  ];
}

function widthProblems(seen: FilterSeen, made: LadderForWidth): Problem[] {
  const { bandwidth, c0 } = seen;
  // The wish cannot be met, so the stage fails, though the nearest filter is there to be looked at.
  const unmet = (says: string, help: string): Problem[] => [
    { field: 'filter.bandwidth', weight: 'stops', says, try: help },
  ];
  if (made.outcome === 'wide') {
    const most = made.widest.width;
    // Two figures that differ must not read alike.
    const limit = hertz(most) === hertz(bandwidth) ? format(most, 'Hz', 6) : hertz(most);
    return unmet(
      `Out of reach: ${hertz(bandwidth)} is more than these crystals can. With ${seen.crystals} of them in this family ${limit} is the most; the sheet shows that filter.`,
      `Up to ${hertz(Math.floor(most / 10) * 10)} can be had. The holder sets the limit: C0 of ${farads((c0 * most) / bandwidth)} instead of ${farads(c0)} would do, or crystals with more Cm (full-height cans), a higher frequency, or a coil across each crystal that tunes out C0.`,
    );
  }
  if (made.outcome === 'narrow') {
    return unmet(
      `Too narrow: with their losses these crystals are ${hertz(made.width)} wide whatever the parts.`,
      'Crystals of higher Q, of a lower frequency, or more of them.',
    );
  }
  if (made.outcome === 'gap') {
    return unmet(
      `With these losses there is no filter of this family just ${hertz(bandwidth)} wide: its outermost hump sinks below −3 dB there. The sheet shows one of ${hertz(made.width)}.`,
      'Less ripple, fewer crystals, or another family.',
    );
  }
  return [];
}

function lossProblems(seen: FilterSeen, made: LadderForWidth, results: Results): Problem[] {
  const found: Problem[] = [];
  if (results.corners === 'fails' && made.outcome !== 'wide') {
    found.push({
      field: 'filter.family',
      weight: 'warns',
      says: `Loss rounds the corners by ${format(results.rounding ?? 0, 'dB', 3)}: this is no longer the family asked for.`,
      try: `Qu ${format(seen.qu, '1', 2)} is ${format(results.qRatio ?? 0, '1', 2)} times f/B where 20 is comfortable: better or fewer crystals, a wider filter, or equal capacitors.`,
    });
  }
  if (-made.band.gain > 10) {
    found.push({
      field: 'filter.bandwidth',
      weight: 'warns',
      says: `This filter loses ${format(-made.band.gain, 'dB', 3)}.`,
      try: 'A wider filter, fewer crystals, or crystals of higher Q.',
    });
  }
  return found;
}

function partProblems(seen: FilterSeen, made: LadderForWidth): Problem[] {
  const least = Math.min(...made.ladder.coupling);
  if (least >= DOUBTFUL) return [];
  const says = `A coupling capacitor of ${farads(least)} is hardly more than stray capacitance.`;
  if (seen.form === 'shunt') {
    // A given capacitor across the crystals is what keeps the couplings small.
    const given = seen.across !== null;
    return [
      {
        field: given ? 'filter.across' : 'filter.bandwidth',
        weight: 'warns',
        says,
        try: given
          ? 'More across each crystal; blank takes as much as the width allows.'
          : 'A narrower filter, crystals with more Cm, or crystals in series.',
      },
    ];
  }
  return [
    {
      field: seen.stray > least ? 'filter.stray' : 'filter.bandwidth',
      weight: 'warns',
      says,
      try: 'Crystals of lower impedance (smaller Lm), or a narrower filter.',
    },
  ];
}

/** Ends that are off by half as much again are worth a word. */
function endProblems(seen: FilterSeen, { ends, endsLoad, rippleFound }: Results): Problem[] {
  return (
    [
      ['sourceResistance', ends],
      ['loadResistance', endsLoad],
    ] as const
  ).flatMap(([key, wanted]) => {
    const given = seen[key];
    if (wanted === null || given === null) return [];
    const ratio = Math.max(wanted / given, given / wanted);
    if (ratio <= 1.5) return [];
    return [
      {
        field: `filter.${key}`,
        weight: 'warns',
        says: `The filter wants ${format(wanted, 'Ω', 3)} there, not ${format(given, 'Ω', 3)}; as it is, the ripple is ${format(rippleFound ?? 0, 'dB', 4)}.`,
        try: `A transformer of ${format(Math.sqrt(ratio), '1', 3)} : 1 turns, an L match, or a pad.`,
      },
    ];
  });
}
