import { useMemo } from 'react';
import { NetworkDrawing, type NetworkPart } from '../../design/drawing/NetworkDrawing.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Element {
  readonly label: string | null;
  readonly part: 'capacitor' | 'coil' | null;
  readonly fittedC: number | null;
  readonly l: number | null;
}

/** The network as it is wired, from the collector to the antenna. */
export function NetworkPicture() {
  const elements = useValue<readonly Element[]>('output.elements');
  const primary = useValue<number>('output.transformerPrimary');
  const secondary = useValue<number>('output.transformerSecondary');
  const load = useValue<number>('output.inputResistance');
  const antenna = useValue<number>('plan.antenna');
  const parts = useMemo(() => {
    if (elements === null || load === null || antenna === null) return [];
    const list: NetworkPart[] = [
      {
        key: 'collector',
        kind: 'start',
        label: 'Collector',
        value: `sees ${format(load, 'Ω', 3)}`,
      },
    ];
    if (primary !== null && secondary !== null) {
      const value = `${primary} : ${secondary}`;
      list.push({ key: 'transformer', kind: 'transformer', label: 'Turns', value });
    }
    for (const { label, part, fittedC, l } of elements) {
      const coil = part === 'coil';
      list.push({
        key: label ?? '',
        label: label ?? '',
        kind: coil ? 'coil' : 'shuntCapacitor',
        value: coil ? format(l ?? Number.NaN, 'H', 3) : format(fittedC ?? Number.NaN, 'F', 3),
      });
    }
    return [
      ...list,
      { key: 'antenna', kind: 'end', label: 'Antenna', value: format(antenna, 'Ω', 3) } as const,
    ];
  }, [elements, primary, secondary, load, antenna]);
  if (parts.length === 0) return null;
  return <NetworkDrawing label="The network from collector to antenna" parts={parts} />;
}
