import { INSIDE_SIZE, ladderTransfer, TRANSFER_SIZE } from '../../circuit/ladderTransfer.ts';
import { lowpassResponse } from '../../circuit/lowpassResponse.ts';
import type { OutputLadder } from '../../circuit/outputLadder.ts';
import { ruleWords } from '../../data/ruleSets.ts';
import { noResults, type Work } from '../../fields/stage.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { cautions, refusals } from './cautions.ts';
import { elementRows } from './elementRows.ts';
import { outputFields } from './fields.ts';
import { harmonicRows, outcomeOf } from './harmonicRows.ts';
import { ladderOf, network } from './network.ts';
import type { OutputSeen } from './seen.ts';

/** Points of the response curve. */
const POINTS = 241;

/** The network with the parts fitted, and what comes out of it. */
export function workOutput(seen: OutputSeen): Work<typeof outputFields> {
  const made = network(seen);
  if ('refusal' in made) {
    return { results: noResults(outputFields), problems: refusals(seen, made) };
  }
  const { parts, turns, cutoff } = made;
  const out = new Float64Array(TRANSFER_SIZE);
  const inside = new Float64Array(parts.length * INSIDE_SIZE);

  // The network alone, fed by a current.
  const alone = ladderOf(parts, turns, seen, Number.POSITIVE_INFINITY);
  ladderTransfer(alone, seen.nominal, out, inside);
  const fedZ = Math.hypot(out[0] ?? 0, out[1] ?? 0);
  const inputResistance = out[2] ?? 0;
  const inputReactance = out[3] ?? 0;
  const loss =
    parts.length === 0 ? 0 : -10 * Math.log10(fedZ ** 2 / (seen.antenna * inputResistance));
  const drive = Math.min(1, seen.collectorLoad / Math.hypot(inputResistance, inputReactance));
  const pepAntenna = ((drive * seen.fundamental) ** 2 * inputResistance) / 2 / powerRatioOfDb(loss);

  // With the collector's own resistance across it, as the harmonics meet it.
  const ladder = ladderOf(parts, turns, seen, seen.outputImpedance ?? Number.POSITIVE_INFINITY);
  ladderTransfer(ladder, seen.nominal, out);
  const transimpedance = Math.hypot(out[0] ?? 0, out[1] ?? 0);
  const rule = { key: seen.rules, power: pepAntenna, own: seen.ownLimit, ownLines: seen.ownRows };
  const harmonics = harmonicRows(
    ladder,
    seen.harmonicCurrents,
    transimpedance,
    rule,
    seen.marginWanted,
  );
  const worst = harmonics.reduce<(typeof harmonics)[number] | null>(
    (least, row) =>
      row.margin !== null && row.margin < (least?.margin ?? Number.POSITIVE_INFINITY) ? row : least,
    null,
  );
  const elements = elementRows(parts, inside, fedZ, {
    ...seen,
    antennaPeak: Math.sqrt(2 * pepAntenna * seen.antenna),
  });
  const results: Work<typeof outputFields>['results'] = {
    transformerPrimary: turns?.primary ?? null,
    transformerSecondary: turns?.secondary ?? null,
    transformerRatio: turns?.ratio ?? null,
    cutoff,
    inputResistance,
    inputReactance,
    returnLoss: returnLoss(inputResistance, inputReactance, seen.collectorLoad),
    drive,
    transimpedance,
    loss,
    pepAntenna,
    elements,
    coils: elements
      .filter((row) => row.part === 'coil')
      .map(({ label, l, amps, volts }) => ({ label, l, current: amps, voltage: volts })),
    harmonics,
    worstMargin: worst?.margin ?? null,
    worstOrder: worst?.order ?? null,
    verdict: worst?.margin == null ? 'holds' : outcomeOf(worst.margin, seen.marginWanted),
    rule: ruleWords(seen.rules),
    response: responseOf(ladder, transimpedance),
    ladder: alone,
  };
  return { results, problems: cautions(seen, results) };
}

/** Return loss against a wanted resistance, dB; 100 dB stands for perfect. */
function returnLoss(r: number, x: number, wanted: number): number {
  const back = Math.hypot(r - wanted, x) / Math.hypot(r + wanted, x);
  return Math.min(100, -20 * Math.log10(back));
}

function responseOf(ladder: OutputLadder, transimpedance: number) {
  const frequency = new Float64Array(POINTS);
  const level = new Float64Array(POINTS);
  for (let i = 0; i < POINTS; i += 1) {
    frequency[i] = ladder.reference * 0.5 * 20 ** (i / (POINTS - 1));
  }
  lowpassResponse(ladder, frequency, level);
  for (let i = 0; i < POINTS; i += 1) {
    level[i] = 20 * Math.log10((level[i] ?? 0) / transimpedance);
  }
  return { frequency, level };
}
