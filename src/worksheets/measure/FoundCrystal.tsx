import { Table, type TableColumn } from '../../design/Table.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useMove, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from '../bound/Workings.tsx';

interface Line {
  /** Paths of the exact figure, its ±, the shortcut and how far that is off. */
  readonly exact: string;
  readonly error?: string;
  readonly short?: string;
  readonly off?: string;
}

const lines: readonly Line[] = [
  {
    exact: 'measure.cm',
    error: 'measure.cmError',
    short: 'measure.cmShort',
    off: 'measure.cmOff',
  },
  {
    exact: 'measure.lm',
    error: 'measure.lmError',
    short: 'measure.lmShort',
    off: 'measure.lmOff',
  },
  {
    exact: 'measure.fs',
    error: 'measure.fsError',
    short: 'measure.fsShort',
    off: 'measure.fsOff',
  },
  {
    exact: 'measure.rm',
    error: 'measure.rmError',
    short: 'measure.rmShort',
    off: 'measure.rmOff',
  },
  { exact: 'measure.qu', error: 'measure.quError' },
  { exact: 'measure.c0', error: 'measure.c0Error' },
  { exact: 'measure.fp' },
];

/** Only a level tells these. */
const byLevel = ['measure.rm', 'measure.qu'];

const columns: TableColumn[] = [
  { key: 'name', label: 'Figure', as: 'words' },
  { key: 'exact', label: 'Exact' },
  { key: 'error', label: '±' },
  { key: 'short', label: 'Shortcut' },
  { key: 'off', label: 'Shortcut off by' },
];

/** Stands at the head of the leaf too, and opens its workings there. */
const MAIN = 'measure.cm';

const paths = lines.flatMap(({ exact, error, short, off }) =>
  [exact, error, short, off].filter((path) => path !== undefined && path !== MAIN),
);

/** Each figure of the crystal with its ±, and what the shortcut would have said. */
export function FoundCrystal() {
  const method = useValue<string>('measure.method');
  const told = lines.filter(({ exact }) => method === 'fixture' || !byLevel.includes(exact));
  const open = useBench((s) => (s.open && paths.includes(s.open.path) ? s.open : null));
  return (
    <>
      <Table
        caption="What the readings make of it"
        columns={columns}
        narrow="stack"
        rows={told.map(({ exact, error, short, off }) => ({
          key: exact,
          cells: {
            name: fieldAt(exact)?.label ?? exact,
            exact: <Cell of={exact} />,
            error: <Cell of={error} />,
            short: <Cell of={short} />,
            off: <Cell of={off} />,
          },
        }))}
      />
      {open && <Workings of={open.path} />}
    </>
  );
}

/** One figure, that opens its workings under the table. */
function Cell({ of }: { of: string | undefined }) {
  return of === undefined ? <>–</> : <Figure of={of} />;
}

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
