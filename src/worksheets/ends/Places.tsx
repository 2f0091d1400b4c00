import { Table } from '../../design/Table.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from '../bound/Workings.tsx';

const rows = [
  ['Ripple', 'ends.rightRipple', 'ends.realRipple', 'filter.rippleFound'],
  ['Loss', 'ends.rightLoss', 'ends.realLoss', 'filter.loss'],
  ['Width at −3 dB', 'ends.rightWidth', 'ends.realWidth', 'filter.width3'],
  ['Lower edge', 'ends.rightLow', 'ends.realLow', 'filter.low3'],
  ['Upper edge', 'ends.rightHigh', 'ends.realHigh', 'filter.high3'],
  ['Best point', 'ends.rightPeak', 'ends.realPeak', 'filter.peak'],
] as const;

const paths: readonly string[] = rows.flatMap(([, ...three]) => three);

/** The same filter in three places: right ends, the amplifiers, and as dragged. */
export function Places() {
  const open = useBench((s) => (s.open && paths.includes(s.open.path) ? s.open : null));
  return (
    <>
      <Table
        caption="The same filter between"
        narrow="stack"
        columns={[
          { key: 'name', label: 'Figure', as: 'words' },
          { key: 'right', label: 'Right ends' },
          { key: 'real', label: 'Real ends' },
          { key: 'live', label: 'As dragged' },
        ]}
        rows={rows.map(([name, right, real, live]) => ({
          key: name,
          cells: {
            name,
            right: <Cell of={right} />,
            real: <Cell of={real} />,
            live: <Cell of={live} />,
          },
        }))}
      />
      {open && open.path !== 'ends.realRipple' && <Workings of={open.path} />}
    </>
  );
}

function Cell({ of }: { of: string }) {
  const value = useValue<number>(of);
  const isOpen = useBench((s) => s.open?.path === of);
  const openWorking = useBench((s) => s.openWorking);
  const field = fieldAt(of);
  const text = field ? shown(field, value) : '';
  if (text === '') return <>–</>;
  return (
    <button
      type="button"
      className="cell-how"
      aria-expanded={isOpen}
      title="Show the workings"
      onClick={() => openWorking(isOpen ? null : of)}
    >
      {text}
    </button>
  );
}
