import { useDeferredValue, useMemo } from 'react';
import { type Level, LevelChart } from '../../design/chart/LevelChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface ChainRow {
  readonly point: string;
  readonly level: number | null;
  readonly gain: number | null;
  readonly clip: number | null;
}

/** Words short enough to stand side by side under the picture. */
const short: Readonly<Record<string, string>> = {
  Microphone: 'Voice',
  'Microphone amplifier, collector': 'Mic amp',
  'Modulator, audio side': 'Audio in',
  'Modulator, output': 'Modulator out',
  'First amplifier, input': 'Pad out',
  'First amplifier, collector': 'First amp',
  'Filter, output': 'Filter out',
  'Second amplifier, collector': 'Second amp',
  'Mixer, output': 'Mixer out',
  'Band-pass, output': 'Band-pass out',
  'Third amplifier, collector': 'Third amp',
  'Driver, collector': 'Driver',
  'Final, collector': 'Final',
};

/** The level at each place from the microphone to the antenna, and the room above it. */
export function LevelPicture() {
  const chain = useDeferredValue(useValue<readonly ChainRow[]>('transmit.chain'));
  const first = useValue<string>('transmit.first');
  const reserve = useValue<number>('transmit.reserve');
  const over = useValue<number>('transmit.over');
  const levels = useMemo(() => places(chain ?? []), [chain]);
  if (levels.length === 0) return null;
  return (
    <LevelChart
      title="Levels from microphone to antenna"
      summary={summaryOf(first, reserve, over)}
      levels={levels}
    />
  );
}

/** A place for each row; two sides of an ideal transformer carry the same level and are one place. */
function places(chain: readonly ChainRow[]): readonly Level[] {
  const levels: Level[] = [];
  let joins = false;
  for (const { point, level, gain, clip } of chain) {
    const last = levels.at(-1);
    if (joins && last) {
      if (clip !== null) last.ceiling = Math.min(last.ceiling ?? clip, clip);
    } else if (level !== null) {
      levels.push({ key: point, label: short[point] ?? point, level, ceiling: clip ?? undefined });
    }
    joins = gain === 0;
  }
  return levels;
}

function summaryOf(first: string | null, reserve: number | null, over: number | null): string {
  const drive =
    over === null || Math.abs(over) < 0.05
      ? 'At full power'
      : over > 0
        ? `Driven ${format(over, 'dB', 3)} beyond full power`
        : `Driven ${format(-over, 'dB', 3)} short of full power`;
  const room = `the least headroom before the final is ${format(reserve ?? Number.NaN, 'dB', 3)}`;
  return `${drive}, ${room}. First to flatten: ${first ?? '–'}.`;
}
