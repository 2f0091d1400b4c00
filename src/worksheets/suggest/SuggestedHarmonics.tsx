import { memo, useMemo } from 'react';
import { HarmonicChart } from '../../design/chart/HarmonicChart.tsx';
import type { Offered } from '../../engine/errands/suggest/suggestAnswer.ts';
import { format, formatSame } from '../../engine/quantity/format.ts';

/** Below this nothing is drawn: a real layout lets more through than arithmetic does, dBc. */
const FLOOR = -100;

/** The harmonics of the network that is suggested. */
export const SuggestedHarmonics = memo(function SuggestedHarmonics({
  offered,
}: {
  offered: Offered;
}) {
  const { harmonics, margin, order } = offered;
  const picture = useMemo(() => {
    const { numbers, unit } = formatSame(
      harmonics.map(({ frequency }) => frequency),
      'Hz',
      3,
    );
    const rows = harmonics.map((one, i) => ({ ...one, frequency: numbers[i] ?? '' }));
    return { harmonics: rows, frequencyUnit: unit };
  }, [harmonics]);
  if (harmonics.length === 0) return null;
  return (
    <HarmonicChart
      title="Its harmonics at the antenna"
      summary={`Harmonic ${order} comes nearest: ${format(margin ?? 0, 'dB', 3)} under the limit.`}
      limitLabel="limit"
      floor={FLOOR}
      {...picture}
    />
  );
});
