import { INSIDE_SIZE, ladderTransfer, TRANSFER_SIZE } from '../../circuit/ladderTransfer.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { elementRows, woundRows } from './elementRows.ts';
import { fitParts } from './fitParts.ts';
import { harmonicRows, outcomeOf } from './harmonicRows.ts';
import { ladderOf } from './ladderOf.ts';
import { type Network, network } from './network.ts';
import { partVolts } from './partVolts.ts';
import { readMeasured } from './readMeasured.ts';
import type { OutputSeen } from './seen.ts';

const out = new Float64Array(TRANSFER_SIZE);
const none: ReadonlyMap<string, number> = new Map();

/**
 * A network with the parts it is built of, and all that comes of it but the curve: some 30 µs. A
 * suggestion calls it for every network that it looks through.
 *
 * @param seen what Output sees
 * @param measured own values of parts by name, F and H
 */
export function candidateNetwork(
  seen: OutputSeen,
  measured = seen.measured === null ? none : readMeasured(seen.measured).values,
) {
  const made = network(seen);
  return 'refusal' in made ? made : worked(seen, made, measured);
}

function worked(
  seen: OutputSeen,
  { parts: exact, turns, cutoff, end, stop }: Exclude<Network, { refusal: string }>,
  measured: ReadonlyMap<string, number>,
) {
  const parts = fitParts(exact, seen, partVolts(exact, turns, seen), measured);

  // The network alone, fed by a current.
  const alone = ladderOf(parts, turns, seen, Number.POSITIVE_INFINITY);
  const inside = new Float64Array(alone.branches.length * INSIDE_SIZE);
  ladderTransfer(alone, seen.nominal, out, inside);
  const fedZ = Math.hypot(out[0] ?? 0, out[1] ?? 0);
  const inputResistance = out[2] ?? 0;
  const inputReactance = out[3] ?? 0;
  const loss =
    parts.length === 0 ? 0 : -10 * Math.log10(fedZ ** 2 / (seen.antenna * inputResistance));
  const drive = Math.min(1, seen.collectorLoad / Math.hypot(inputResistance, inputReactance));
  const pepAntenna = ((drive * seen.fundamental) ** 2 * inputResistance) / 2 / powerRatioOfDb(loss);

  // With the collector's own resistance across it, as the harmonics meet it.
  const ladder = {
    ...alone,
    sourceResistance: seen.outputImpedance ?? Number.POSITIVE_INFINITY,
  };
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
  const antennaPeak = Math.sqrt(2 * pepAntenna * seen.antenna);
  const elements = elementRows(parts, inside, fedZ, antennaPeak, seen.nominal);
  return {
    parts,
    /** Fed by the collector, its own resistance across it. */
    loaded: ladder,
    results: {
      transformerPrimary: turns?.primary ?? null,
      transformerSecondary: turns?.secondary ?? null,
      transformerRatio: turns?.ratio ?? null,
      cutoff,
      filterEnd: end,
      stopEdge: stop && cutoff !== null ? stop.ratio * cutoff : null,
      stopLoss: stop?.prototype.attenuation ?? null,
      inputResistance,
      inputReactance,
      returnLoss: returnLoss(inputResistance, inputReactance, seen.collectorLoad),
      drive,
      transimpedance,
      loss,
      lost: pepAntenna * (powerRatioOfDb(loss) - 1),
      pepAntenna,
      elements,
      coils: elements
        .filter((row) => row.part === 'coil')
        .map(({ label, exactL, amps, volts }) => ({
          label,
          l: exactL,
          current: amps,
          voltage: volts,
          own: measured.get(label ?? '') ?? null,
        })),
      asWound: woundRows(parts),
      harmonics,
      partCount:
        parts.reduce((sum, { singles }) => sum + Math.max(1, singles.length), 0) + (turns ? 1 : 0),
      worstMargin: worst?.margin ?? null,
      worstOrder: worst?.order ?? null,
      verdict:
        worst?.margin == null ? ('holds' as const) : outcomeOf(worst.margin, seen.marginWanted),
      ladder: alone,
      wound: parts.flatMap(({ part, wound }) => (wound ? [{ label: part.label, wound }] : [])),
    },
  };
}

/** Return loss against a wanted resistance, dB; 100 dB stands for perfect. */
function returnLoss(r: number, x: number, wanted: number): number {
  const back = Math.hypot(r - wanted, x) / Math.hypot(r + wanted, x);
  return Math.min(100, -20 * Math.log10(back));
}
