import { memo, useMemo } from 'react';
import { AirCoilDrawing } from '../../design/drawing/AirCoilDrawing.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface AirRow {
  readonly label: string;
  readonly turns: number;
  readonly length: number;
}

/** The first coil on air, from the side. */
export const AirPicture = memo(function AirPicture() {
  const rows = useValue<readonly AirRow[]>('windings.airCoils');
  const former = useValue<number>('cores.former');
  const wire = useValue<number>('cores.airWire');
  const props = useMemo(() => {
    const row = rows?.[0];
    if (!row || former === null || wire === null) return null;
    const { label, turns, length } = row;
    return {
      label: `${label}: ${format(turns, '1', 3)} turns over ${format(length, 'm', 3)} on a former of ${format(former, 'm', 3)}, to scale.`,
      former,
      wire,
      turns,
      long: length,
      longText: `${label}: ${format(turns, '1', 3)} turns over ${format(length, 'm', 3)}`,
      formerText: format(former, 'm', 3),
    };
  }, [rows, former, wire]);
  return props && <AirCoilDrawing {...props} />;
});
