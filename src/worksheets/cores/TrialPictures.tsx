import { memo, useMemo } from 'react';
import { ToroidDrawing } from '../../design/drawing/ToroidDrawing.tsx';
import { WaysToStand } from '../../design/drawing/WaysToStand.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

/** Most turns that are drawn one by one. */
const MOST = 60;

/** Both trial windings on the ring, as far as they are said: dimensions from the callipers, or usual ones. */
export const TrialPictures = memo(function TrialPictures() {
  const outer = useValue<number>('cores.outer');
  const inner = useValue<number>('cores.inner');
  const first = useValue<number>('cores.turns1');
  const l1 = useValue<number>('cores.trial1');
  const second = useValue<number>('cores.turns2');
  const l2 = useValue<number>('cores.trial2');
  const items = useMemo(() => {
    const [a, b] = outer !== null && inner !== null && outer > inner ? [outer, inner] : [12.7, 7.7];
    const one = (key: string, turns: number | null, l: number | null) =>
      turns === null || turns > MOST
        ? []
        : [
            {
              key,
              title: key,
              figure: l === null ? '…' : format(l, 'H', 3),
              more: turns === 1 ? '1 turn' : `${turns} turns`,
              picture: (
                <ToroidDrawing
                  label={`${key}: ${turns} turns on the ring, spread out.`}
                  outer={a}
                  inner={b}
                  wire={Math.min(0.04 * a, (2 * b) / turns)}
                  turns={[turns]}
                  told
                />
              ),
            },
          ];
    return [...one('First trial', first, l1), ...one('Second trial', second, l2)];
  }, [outer, inner, first, l1, second, l2]);
  return items.length === 0 ? null : <WaysToStand items={items} />;
});
