import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { transformerRows } from './transformerRows.ts';

/** Copper thinner than this breaks between the fingers, m. */
const THIN = 0.2e-3;

/** What is amiss with a broadband winding. */
export function transformerCautions(rows: ReturnType<typeof transformerRows>): Problem[] {
  const problems: Problem[] = [];
  for (const { label, core, times, outcome, flux, bare } of rows) {
    if (bare < THIN) {
      problems.push({
        field: flux === null ? 'windings.modulatorCore' : 'windings.transformerCore',
        weight: 'warns',
        says: `${label}: so many turns leave room for ${format(bare, 'm', 3)} wire only on ${core}.`,
        try: 'A larger core, or an L match in its place.',
      });
    }
    if (times < 2) {
      problems.push({
        field: label === 'Modulator' ? 'windings.modulatorTurns' : 'windings.reactanceTimes',
        weight: 'warns',
        says: `${label}: the winding’s impedance is only ${format(times, '1', 2)} times the circuit’s.`,
        try: 'More turns, or a core with more inductance for each turn.',
      });
    }
    if (outcome === 'fails' && flux !== null) {
      problems.push({
        field: 'windings.transformerCore',
        weight: 'warns',
        says: `${label}: ${format(flux, 'T', 2)} in ${core} is over the guideline: it gets hot.`,
        try: 'A larger core.',
      });
    }
  }
  return problems;
}
