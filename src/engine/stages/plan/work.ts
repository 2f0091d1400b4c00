import { bandAt } from '../../data/bands.ts';
import type { Problem, Seen, Work } from '../../fields/stage.ts';
import type { planFields } from './fields.ts';
import type { planReads } from './reads.ts';

const SPEED_OF_LIGHT = 299_792_458;

/** Frequency, level and voltage that the rest of the rig is designed for. */
export function workPlan(seen: Seen<typeof planFields, typeof planReads>): Work<typeof planFields> {
  const { frequency, marking, pep, antenna } = seen;
  const nominal = frequency ?? marking;
  const problems: Problem[] = [];
  if (nominal === null) {
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
  return {
    results: {
      nominal,
      band: nominal === null ? null : (band?.name ?? 'no amateur band'),
      wavelength: nominal === null ? null : SPEED_OF_LIGHT / nominal,
      pepLevel: 10 * Math.log10(pep / 1e-3),
      antennaVpp: Math.sqrt(8 * pep * antenna),
      antennaCurrent: Math.sqrt(pep / antenna),
    },
    problems,
    origins: { nominal: 'typed' },
  };
}
