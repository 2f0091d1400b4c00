import { leastPiQ } from '../../circuit/piMatch.ts';
import { turnsRatio } from '../../circuit/turnsRatio.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { OutputSeen } from './seen.ts';

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
  const hasCutoff = ['chebyshev', 'butterworth', 'elliptic'].includes(seen.lowpass);
  const short = pepAntenna !== null && pepAntenna < seen.pep * 0.794;

  // Is the power wanted out of reach for want of a match?
  if (short && seen.match === 'none') {
    const { ratio } = turnsRatio(seen.antenna / seen.collectorLoad, true);
    const { primary, secondary } = turnsRatio(seen.antenna / seen.collectorLoad, false);
    problems.push({
      field: 'output.match',
      weight: 'stops',
      says: `${format(seen.pep, 'W', 2)} needs a collector load of ${ohms(seen.collectorLoad)}; straight on, the final sees ${ohms(inputResistance ?? 0)} and gives ${format(pepAntenna, 'W', 2)}.`,
      try: `A transformer of ${ratio >= 1 ? `1:${ratio.toFixed(2)}` : `${(1 / ratio).toFixed(2)}:1`}, ${primary}:${secondary} in whole turns, collector to antenna, would do it, or a pi match with a loaded Q of at least ${leastPiQ(seen.collectorLoad, seen.antenna).toFixed(1)}.`,
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
      field:
        hasCutoff && seen.cutoffRatio < 1.1 && seen.match !== 'pi'
          ? 'output.cutoffRatio'
          : 'output.coilQ',
      weight: 'warns',
      says: `The network keeps ${format(loss, 'dB', 3)}: its coils get warm.`,
      try: 'Better coils on larger cores, a lower loaded Q, or a cutoff further up.',
    });
  }

  // Do the harmonics keep the rule?
  if (results.verdict === 'fails' && results.worstMargin !== null) {
    problems.push({
      field: hasCutoff ? 'output.order' : 'output.lowpass',
      weight: 'warns',
      says: `Harmonic ${results.worstOrder} lies ${format(-results.worstMargin, 'dB', 3)} above the limit.`,
      try: hasCutoff
        ? `More elements, a cutoff nearer to the operating frequency${results.worstOrder === 2 && seen.traps === 'none' ? ', or a trap on the second harmonic' : ''}. Do not go on the air with it.`
        : 'A Chebyshev filter of seven elements. Do not go on the air with it.',
    });
  }
  return problems;
}

const ohms = (value: number) => format(value, 'Ω', 3);
