import { leastPiQ } from '../../circuit/piMatch.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { Network } from './network.ts';
import type { OutputSeen } from './seen.ts';

/** Why there is no such network, and what would do. */
export function refusals(
  seen: OutputSeen,
  refused: Extract<Network, { refusal: string }>,
): Problem[] {
  if (refused.refusal === 'piQ') {
    return [
      {
        field: 'output.loadedQ',
        weight: 'stops',
        says: `A pi match from ${ohms(seen.collectorLoad)} to ${ohms(seen.antenna)} needs a loaded Q of at least ${refused.least.toFixed(2)}; ${seen.loadedQ} is too low.`,
        try: `Ask for ${(Math.ceil(refused.least * 10 + 1) / 10).toFixed(1)} or more, or use a transformer.`,
      },
    ];
  }
  return [
    {
      field: 'output.order',
      weight: 'stops',
      says: `A Chebyshev filter of ${seen.order} elements has unequal ends: it would not fit ${ohms(seen.antenna)} on both sides.`,
      try: `Take ${refused.least} elements.`,
    },
  ];
}

/** What can be built but should be looked at. */
export function cautions(
  seen: OutputSeen,
  results: {
    readonly pepAntenna: number | null;
    readonly loss: number | null;
    readonly returnLoss: number | null;
    readonly inputResistance: number | null;
    readonly worstMargin: number | null;
    readonly worstOrder: number | null;
    readonly verdict: 'holds' | 'close' | 'fails' | null;
  },
): Problem[] {
  const problems: Problem[] = [];
  const { pepAntenna, loss, returnLoss, inputResistance } = results;
  const short = pepAntenna !== null && pepAntenna < seen.pep * 0.794;

  // Is the power wanted out of reach for want of a match?
  if (short && seen.match === 'none') {
    const ratio = Math.sqrt(seen.antenna / seen.collectorLoad);
    problems.push({
      field: 'output.match',
      weight: 'stops',
      says: `${format(seen.pep, 'W', 2)} needs a collector load of ${ohms(seen.collectorLoad)}; straight on, the final sees ${ohms(inputResistance ?? 0)} and gives ${format(pepAntenna, 'W', 2)}.`,
      try: `A transformer of ${ratio >= 1 ? `1:${ratio.toFixed(2)}` : `${(1 / ratio).toFixed(2)}:1`} (turns, collector to antenna) would do it, or a pi match with a loaded Q of at least ${leastPiQ(seen.collectorLoad, seen.antenna).toFixed(1)}.`,
    });
  } else if (short && returnLoss !== null && returnLoss < 14) {
    problems.push({
      field: 'output.fitted',
      weight: 'warns',
      says: `The network shows the final ${ohms(inputResistance ?? 0)} instead of ${ohms(seen.collectorLoad)}, so only ${format(pepAntenna, 'W', 2)} comes out.`,
      try: 'Take a finer series of capacitors, or move the cutoff further up.',
    });
  }

  // Is much of it lost?
  if (loss !== null && loss > 1) {
    problems.push({
      field: seen.cutoffRatio < 1.1 && seen.match !== 'pi' ? 'output.cutoffRatio' : 'output.coilQ',
      weight: 'warns',
      says: `The network keeps ${format(loss, 'dB', 3)}: its coils get warm.`,
      try: 'Better coils, a lower loaded Q, or a cutoff further up.',
    });
  }

  // Do the harmonics keep the rule?
  if (results.verdict === 'fails' && results.worstMargin !== null) {
    problems.push({
      field: seen.lowpass === 'none' ? 'output.lowpass' : 'output.order',
      weight: 'warns',
      says: `Harmonic ${results.worstOrder} lies ${format(-results.worstMargin, 'dB', 3)} above the limit.`,
      try:
        seen.lowpass === 'chebyshev' || seen.lowpass === 'butterworth'
          ? 'More elements, or a cutoff nearer to the operating frequency. Do not go on the air with it.'
          : 'A Chebyshev filter of seven elements. Do not go on the air with it.',
    });
  }
  return problems;
}

const ohms = (value: number) => format(value, 'Ω', 3);
