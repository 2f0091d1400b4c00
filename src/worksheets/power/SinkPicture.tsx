import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { heightAt } from '../../design/chart/thinned.ts';
import { heatSinks } from '../../engine/data/heatSinks.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface OverSink {
  readonly sink: Float64Array;
  readonly speech: Float64Array;
  readonly tone: Float64Array;
}

const ZERO = 273.15;

/** What each of the usual heat sinks would make of it. */
function usual({ sink, speech, tone }: OverSink) {
  return {
    columns: [
      { key: 'what', label: 'Heat sink', as: 'words' as const },
      { key: 'sink', label: 'In free air' },
      { key: 'speech', label: 'On speech' },
      { key: 'tone', label: 'Steady tone' },
    ],
    rows: heatSinks.map(({ title, resistance }) => ({
      key: title,
      cells: {
        what: title,
        sink: format(resistance, 'K/W', 2),
        speech: format(heightAt({ x: sink, y: speech }, resistance) ?? 0, '°C', 2),
        tone: format(heightAt({ x: sink, y: tone }, resistance) ?? 0, '°C', 2),
      },
    })),
  };
}

/** Junction temperature against heat sink, for speech and for a steady tone. */
export function SinkPicture() {
  const curve = useDeferredValue(useValue<OverSink>('transmit.overSink'));
  const allowed = useValue<number>('transmit.junctionAllowed');
  const ambient = useValue<number>('plan.ambient');
  const sink = useValue<number>('transmit.sink');
  const onSink = useValue<string>('transmit.cooling') === 'sink';
  const props = useMemo(() => {
    if (curve === null || allowed === null || ambient === null) return null;
    const celsius = (t: Float64Array) => t.map((k) => k - ZERO);
    const tone = { x: curve.sink, y: celsius(curve.tone) };
    const speech = { x: curve.sink, y: celsius(curve.speech) };
    const to = curve.sink.at(-1) ?? 1;
    // Drawn as far as it matters: half as much again as is allowed.
    const top = ambient - ZERO + 1.5 * (allowed - ambient);
    // The names stand where both curves are still in the picture.
    const seen = curve.sink.findLast((_, i) => (tone.y[i] ?? 0) < 0.85 * top) ?? to;
    return {
      curves: [
        { ...tone, label: 'steady tone', ink: 'main', nameAt: 0.6 * seen, side: 'above' },
        { ...speech, label: 'speech', ink: 'other', nameAt: 0.8 * seen, side: 'below' },
      ],
      x: { from: 0, to, name: 'K/W of the heat sink', unit: 'K/W', step: to / 120 },
      y: {
        from: Math.floor((ambient - ZERO) / 10) * 10,
        to: top,
        name: '°C',
        unit: '°C',
        decimals: 0,
      },
      flats: [{ at: allowed - ZERO, label: 'allowed', end: 'right', side: 'above' }],
      uprights:
        onSink && sink !== null ? [{ at: sink, label: 'this one', kind: 'live' as const }] : [],
      tall: 15,
      table: usual(curve),
    } as const;
  }, [curve, allowed, ambient, sink, onSink]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Junction over heat sink"
      summary="In the warmest air. To the left the larger heat sinks; where a curve crosses the line, no smaller one will do."
      {...props}
    />
  );
}
