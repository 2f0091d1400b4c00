import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { chokeRows } from './chokeRows.ts';
import type { transformerRows } from './transformerRows.ts';

/** Copper thinner than this breaks between the fingers, m. */
const THIN = 0.2e-3;

/** Capacitance that a winding of many turns has without anything else, F: common practice. */
const STRAY = 3e-12;

/** Warmer than this above the air, enamel and ferrite age and mix 43 nears its end, K. */
const HOT = 60;

/** What is amiss with a broadband transformer. */
export function transformerCautions(
  rows: ReturnType<typeof transformerRows>,
  nominal: number,
): Problem[] {
  const problems: Problem[] = [];
  const warn = (field: string, says: string, help: string) =>
    problems.push({ field, weight: 'warns', says, try: help });
  for (const row of rows) {
    const { label, core, times, outcome, flux, bare, form, rise, instead, upper } = row;
    const coreField = `windings.${label === 'Output transformer' ? 'transformerCore' : 'modulatorCore'}`;
    if (bare < THIN) {
      warn(
        coreField,
        `${label}: so many turns leave room for ${format(bare, 'm', 3)} wire only on ${core}.`,
        instead ? `${instead}.` : 'A larger core, or one with two holes.',
      );
    }
    const high = Math.max(row.first, row.second);
    const stray = 1 / (2 * Math.PI * nominal * STRAY);
    if (row.form === 'over' && high > stray / 4) {
      warn(
        coreField,
        `${label}: across ${format(high, 'Ω', 3)} even ${format(STRAY, 'F', 1)} of stray capacitance, ${format(stray, 'Ω', 2)}, are felt.`,
        instead ? `${instead}.` : 'Short leads, turns spread out.',
      );
    }
    if (times < 2) {
      warn(
        form === 'trifilar' ? 'windings.modulatorTurns' : 'windings.reactanceTimes',
        `${label}: the winding’s impedance is only ${format(times, '1', 2)} times the circuit’s.`,
        'More turns, or a core with more inductance for each turn.',
      );
    }
    if (outcome === 'fails' && flux !== null) {
      warn(
        coreField,
        `${label}: ${format(flux, 'T', 2)} in ${core} is over the guideline: it gets hot.`,
        'A larger core, or two of them stacked.',
      );
    }
    if (rise !== null && rise > HOT) {
      warn(
        coreField,
        `${label}: with a steady tone ${core} gets ${format(rise, 'K', 2)} warmer than the air.`,
        'Mix 61, a larger core, or two of them stacked.',
      );
    }
    if (row.angle > Math.PI / 12) {
      warn(
        coreField,
        `${label}: its longest wire is ${format(row.angle, '°', 0)} of a wavelength; good up to ${format(upper, 'Hz', 2)} only.`,
        instead ? `${instead}.` : 'A core with more inductance for each turn.',
      );
    }
  }
  return problems;
}

/** A core that direct current has taken more of than this is the wrong one. */
const LEAST_KEPT = 0.8;

/** What is amiss with a choke. */
export function chokeCautions(rows: ReturnType<typeof chokeRows>): Problem[] {
  return rows.flatMap(({ label, core, kept, direct, flux }): Problem[] =>
    kept >= LEAST_KEPT
      ? []
      : [
          {
            field: `windings.${flux === null ? 'modulatorCore' : 'transformerCore'}`,
            weight: 'warns',
            says: `${label}: ${format(direct, 'A', 2)} of direct current leave ${core} ${format(kept, '%', 2)} of its inductance.`,
            try: 'A larger core, or a mix of lower permeability.',
          },
        ],
  );
}

/** Lines of the list of chokes that were not understood. */
export function lostChokes(lost: readonly number[]): Problem[] {
  const [first] = lost;
  if (first === undefined) return [];
  return [
    {
      field: 'windings.chokesAtHand',
      weight: 'warns',
      says:
        lost.length === 1
          ? `Line ${first} was not understood and is passed over.`
          : `${lost.length} lines, the first of them ${first}, were not understood and are passed over.`,
      try: 'Inductance, greatest current and self-resonance, each with its unit: 10 µH 0.5 A 36 MHz.',
    },
  ];
}
