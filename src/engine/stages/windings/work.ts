import type { Problem, Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { airRows } from './airRows.ts';
import { chokeRows } from './chokeRows.ts';
import { coilRows, coreTitled } from './coilRows.ts';
import { neededRows } from './coresNeeded.ts';
import { edgeRows } from './edgeRows.ts';
import type { windingsFields } from './fields.ts';
import { lossCurve } from './lossCurve.ts';
import { mixRows } from './mixRows.ts';
import { readChokes } from './readChokes.ts';
import type { WindingsSeen } from './seen.ts';
import { spreadRows } from './spreads.ts';
import { chokeCautions, lostChokes, transformerCautions } from './transformerCautions.ts';
import { transformerRows } from './transformerRows.ts';

type Coils = ReturnType<typeof coilRows>;

/** Every coil and transformer of the rig on its core. */
export function workWindings(seen: WindingsSeen): Work<typeof windingsFields> {
  const coils = coilRows(seen);
  const airCoils = airRows(seen);
  // Wound on air, those are the coils.
  const [best, cut] =
    seen.shelf.air === null
      ? [coils.map(({ q }) => q), coils.map(({ length }) => length)]
      : [airCoils.map(({ q }) => q), airCoils.map(({ wire }) => wire)];
  const transformers = transformerRows(seen);
  const mixes = mixRows(seen);
  const hand = readChokes(seen.chokesAtHand);
  const chokes = chokeRows(seen, hand.chokes);
  return {
    results: {
      coils,
      spreads: spreadRows(coils[0], coreTitled(seen, coils[0]?.core)),
      airCoils,
      coresNeeded: neededRows([...coils, ...transformers, ...chokes], seen.listed),
      transformers,
      transformerEdges: edgeRows(transformers, seen.nominal),
      transformerMixes: mixes,
      transformerLosses: lossCurve(mixes),
      chokes,
      leastQ: best.length === 0 ? null : Math.min(...best),
      wireTotal: cut.length === 0 ? null : cut.reduce((sum, length) => sum + length, 0),
    },
    problems: [
      ...coilCautions(coils, seen.coilQ),
      ...transformerCautions(transformers, seen.nominal),
      ...chokeCautions(chokes),
      ...lostChokes(hand.lost),
    ],
  };
}

/** Beyond this, spreading and squeezing no longer make up for whole turns. */
const TRIM = 0.1;

function coilCautions(coils: Coils, reckonedQ: number | null): Problem[] {
  const problems: Problem[] = [];
  const warn = (field: string, says: string, help: string) =>
    problems.push({ field, weight: 'warns', says, try: help });
  const lacking = coils.filter(({ place }) => place === 'lacking');
  if (lacking.length > 0) {
    const names = lacking.map(({ label, core, turns }) => `${label} (${turns} turns on ${core})`);
    warn(
      'cores.box',
      `Nothing that is left in the box will do for ${lacking.map(({ label }) => label).join(', ')}.`,
      `These would: ${names.join(', ')}.`,
    );
  }
  for (const { label, core, fits, wire, outcome, flux, fluxLimit, off, turns } of coils) {
    if (fits === 'crowded') {
      warn(
        'cores.wire',
        `${label}: ${turns} turns of ${wire} do not fit on ${core} in one layer.`,
        'Thinner wire or a larger core.',
      );
    }
    if (outcome === 'fails' && flux !== null && fluxLimit !== null) {
      warn(
        'cores.coilCore',
        `${label}: ${format(flux, 'T', 2)} in ${core}, over the guideline of ${format(fluxLimit, 'T', 2)}: the core gets warm.`,
        'A larger core, or a mix with less inductance for each turn.',
      );
    }
    if (Math.abs(off) > TRIM) {
      warn(
        'cores.coilCore',
        `${label}: ${turns} turns on ${core} are ${format(Math.abs(off), '%', 2)} off, more than spreading makes up for.`,
        'A core with less inductance for each turn.',
      );
    }
  }
  const poor = coils.find(
    ({ q, flux }) => flux !== null && reckonedQ !== null && q < 0.8 * reckonedQ,
  );
  if (poor && reckonedQ !== null) {
    warn(
      'output.coilQ',
      `${poor.label}: its Q is estimated at ${format(poor.q, '1', 2)}, but Output reckons with ${format(reckonedQ, '1', 2)}.`,
      'Thicker wire, a larger core, or reckon with less.',
    );
  }
  return problems;
}
