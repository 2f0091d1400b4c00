import { useMemo } from 'react';
import { NetworkDrawing, type NetworkPart } from '../../design/drawing/NetworkDrawing.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Element {
  readonly label: string | null;
  readonly part: 'capacitor' | 'coil' | 'across' | null;
  readonly fittedC: number | null;
  readonly l: number | null;
}

interface Wound {
  readonly label: string | null;
  readonly notch: number | null;
}

/** The network as it is wired, from the collector to the antenna. */
export function NetworkPicture() {
  const elements = useValue<readonly Element[]>('output.elements');
  const wound = useValue<readonly Wound[]>('output.asWound');
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
    elements.forEach(({ label, part, fittedC, l }, k) => {
      if (part === 'across') return;
      const next = elements[k + 1];
      const across = next?.part === 'across' ? next : null;
      const notch = wound?.find((coil) => coil.label === label)?.notch ?? null;
      const kind = part !== 'coil' ? 'shuntCapacitor' : across || notch !== null ? 'trap' : 'coil';
      list.push({
        key: label ?? '',
        label: across ? `${label}, ${across.label}` : (label ?? ''),
        kind,
        value: part === 'coil' ? format(l ?? Number.NaN, 'H', 3) : farads(fittedC),
        also: [
          ...(across ? [farads(across.fittedC)] : []),
          ...(notch === null ? [] : [`stops ${format(notch, 'Hz', 3)}`]),
        ],
      });
    });
    return [
      ...list,
      { key: 'antenna', kind: 'end', label: 'Antenna', value: format(antenna, 'Ω', 3) } as const,
    ];
  }, [elements, wound, primary, secondary, load, antenna]);
  if (parts.length === 0) return null;
  return <NetworkDrawing label="The network from collector to antenna" parts={parts} />;
}

const farads = (value: number | null) => format(value ?? Number.NaN, 'F', 3);
