import { Table, type TableColumn } from '../../design/Table.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useMove, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from '../bound/Workings.tsx';

/** Each figure with its standard error. */
const lines: readonly (readonly [figure: string, error: string])[] = [
  ['sweep.fs', 'sweep.fsError'],
  ['sweep.lm', 'sweep.lmError'],
  ['sweep.cm', 'sweep.cmError'],
  ['sweep.rm', 'sweep.rmError'],
  ['sweep.qu', 'sweep.quError'],
  ['sweep.c0', 'sweep.c0Error'],
  ['sweep.fp', 'sweep.fpError'],
];

const columns: TableColumn[] = [
  { key: 'name', label: 'Figure', as: 'words' },
  { key: 'value', label: 'Fitted' },
  { key: 'error', label: '±' },
  { key: 'part', label: 'in parts' },
];

/** Stands at the head of the leaf too, and opens its workings there. */
const MAIN = 'sweep.cm';

const paths = lines.flat().filter((path) => path !== MAIN);

/** The crystal that fits best, each figure with what the noise leaves open. */
export function SweptCrystal() {
  const open = useBench((s) => (s.open && paths.includes(s.open.path) ? s.open : null));
  return (
    <>
      <Table
        caption="The crystal that fits the sweep"
        columns={columns}
        narrow="stack"
        rows={lines.map(([figure, error]) => ({
          key: figure,
          cells: {
            name: fieldAt(figure)?.label ?? figure,
            value: <Figure of={figure} />,
            error: <Figure of={error} />,
            part: <Part of={figure} error={error} />,
          },
        }))}
      />
      {open && <Workings of={open.path} />}
    </>
  );
}

/** One figure, that opens its workings under the table. */
function Figure({ of }: { of: string }) {
  const value = useValue<number>(of);
  const moved = useMove(of) !== undefined;
  const isOpen = useBench((s) => s.open?.path === of);
  const openWorking = useBench((s) => s.openWorking);
  const field = fieldAt(of);
  const text = field ? shown(field, value) : '';
  if (text === '') return <>–</>;
  return (
    <button
      id={of === MAIN ? undefined : of}
      type="button"
      className="cell-how"
      aria-expanded={isOpen}
      data-moved={moved}
      title="Show the workings"
      onClick={() => openWorking(isOpen ? null : of)}
    >
      {text}
    </button>
  );
}

/** The error against the figure, as a person compares it with the tolerance of parts. */
function Part({ of, error }: { of: string; error: string }) {
  const value = useValue<number>(of);
  const off = useValue<number>(error);
  if (value === null || off === null || value === 0) return <>–</>;
  const part = Math.abs(off / value);
  const field = { kind: 'quantity', label: '', help: '', digits: 2 } as const;
  return <>{shown({ ...field, unit: part < 1e-4 ? 'ppm' : '%' }, part)}</>;
}
