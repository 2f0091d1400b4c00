import { bandAt } from '../../data/bands.ts';
import type { Problem, Seen, Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { planFields } from './fields.ts';
import { ownRuleProblems } from './ownRuleProblems.ts';
import { readOwnRules } from './readOwnRules.ts';
import type { planReads } from './reads.ts';

const SPEED_OF_LIGHT = 299_792_458;

/** Frequency, level and voltage that the rest of the rig is designed for. */
export function workPlan(seen: Seen<typeof planFields, typeof planReads>): Work<typeof planFields> {
  const { frequency, marking, pep, antenna, scheme, side, sideband } = seen;
  const converts = scheme === 'conversion';
  const nominal = frequency ?? (converts ? null : marking);
  const problems: Problem[] = converts ? unconverted(frequency, marking) : [];
  if (nominal === null && !converts) {
    problems.push({
      field: 'plan.frequency',
      weight: 'stops',
      says: 'Neither an operating frequency nor a crystal marking is given.',
      try: 'Type the frequency printed on your crystals, such as 7.2M.',
    });
  }
  const band = nominal === null ? undefined : bandAt(nominal);
  if (nominal !== null && band === undefined) {
    problems.push({
      field: frequency === null ? 'plan.marking' : 'plan.frequency',
      weight: 'warns',
      says: 'This frequency lies in no amateur band of any ITU region.',
      try: 'Check the licence conditions before any transmission; a dummy load is always allowed.',
    });
  }
  const own = seen.ownRules === null ? null : readOwnRules(seen.ownRules);
  if (own) problems.push(...ownRuleProblems(own.rows, own.tooMany));
  return {
    results: {
      nominal,
      filterFrequency: converts ? marking : nominal,
      filterSideband: converts && side === 'sum' ? opposite[sideband] : sideband,
      band: nominal === null ? null : (band?.name ?? 'no amateur band'),
      wavelength: nominal === null ? null : SPEED_OF_LIGHT / nominal,
      pepLevel: 10 * Math.log10(pep / 1e-3),
      antennaVpp: Math.sqrt(8 * pep * antenna),
      antennaCurrent: Math.sqrt(pep / antenna),
      ownRows: own?.rows ?? null,
    },
    problems,
    origins: { nominal: 'typed', filterFrequency: 'typed' },
  };
}

const opposite = { lower: 'upper', upper: 'lower' } as const;

/** Nearest that intermediate and operating frequency may come, Hz. */
const APART = 300e3;

/** What a rig with conversion lacks, or can't be. */
function unconverted(frequency: number | null, marking: number | null): Problem[] {
  if (frequency === null) {
    return [
      {
        field: 'plan.frequency',
        weight: 'stops',
        says: 'A rig with conversion needs its operating frequency said.',
        try: 'Type where it is to work, such as 7.1M.',
      },
    ];
  }
  if (marking === null) {
    return [
      {
        field: 'plan.marking',
        weight: 'stops',
        says: 'A rig with conversion needs the marking of its filter’s crystals.',
        try: 'Type the frequency printed on your crystals, such as 9M.',
      },
    ];
  }
  if (Math.abs(frequency - marking) < APART) {
    return [
      {
        field: 'plan.scheme',
        weight: 'warns',
        says: `Operating and intermediate frequency lie only ${format(Math.abs(frequency - marking), 'Hz', 3)} apart: no band-pass keeps them from each other.`,
        try: 'Crystals of another frequency; or let the filter work at the operating frequency.',
      },
    ];
  }
  return [];
}
