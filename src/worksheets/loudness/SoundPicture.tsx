import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { HEARING } from '../../engine/data/hearing.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface LoudnessRow {
  readonly report: string;
  readonly level: number;
  readonly sound: number;
  readonly soundSet: number;
}

/** Reports with a name of their own in the picture. */
const named: readonly string[] = ['S3', 'S5', 'S7', 'S9'];

/** What reaches the ear, from the weakest station to the strongest. */
export const SoundPicture = memo(function SoundPicture() {
  const rows = useValue<readonly LoudnessRow[]>('receive.loudness');
  const noise = useValue<number>('receive.noiseSound');
  const loudest = useValue<number>('receive.loudest');
  const chart = useDeferredValue(
    useMemo(
      () => (rows && noise !== null && loudest !== null ? drawn(rows, noise, loudest) : null),
      [rows, noise, loudest],
    ),
  );
  return chart && <CurveChart {...chart} />;
});

function drawn(rows: readonly LoudnessRow[], noise: number, loudest: number): CurveChartProps {
  const all = rows.flatMap(({ sound, soundSet }) => [sound, soundSet]);
  const first = rows[0]?.level ?? -121;
  const last = rows.at(-1)?.level ?? -33;
  return {
    title: 'What reaches the ear',
    summary: `With the volume left alone, noise is at ${format(noise, 'dB', 2)} and the strongest station at ${format(loudest, 'dB', 2)}.`,
    curves: [
      {
        x: rows.map(({ level }) => level),
        y: rows.map(({ soundSet }) => soundSet),
        label: 'volume as left',
        ink: 'main',
        nameAt: -100,
        side: 'below',
      },
      {
        x: rows.map(({ level }) => level),
        y: rows.map(({ sound }) => sound),
        label: 'full up',
        ink: 'reference',
        nameAt: -112,
        side: 'above',
      },
    ],
    x: { from: first - 3, to: last + 3, name: 'dBm at the antenna', unit: 'dBm', step: 1 },
    y: {
      from: 10 * Math.floor((Math.min(noise, ...all) - 4) / 10),
      to: 10 * Math.ceil((Math.max(HEARING.eightHours, ...all) + 8) / 10),
      name: 'dB over 20 µPa',
      unit: 'dB',
    },
    flats: [
      { at: HEARING.eightHours, label: 'eight hours a day at most', end: 'left' },
      { at: noise, label: 'noise', end: 'right' },
    ],
    points: rows
      .filter(({ report }) => named.includes(report))
      .map(({ report, level, soundSet }) => ({
        x: level,
        y: soundSet,
        label: report,
        side: 'right',
      })),
    tall: 20,
  };
}
