import { Table } from '../../design/Table.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useMove, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from './Workings.tsx';

interface EntriesProps {
  /** Path of a list result: `transmit.harmonicCurrents`. */
  of: string;
  /** What the entries are called: the heading, and each by its place in the list. */
  heading: string;
  nameOf: (index: number) => string;
}

/** A list result, an entry a row: each figure opens its own workings under the table. */
export function Entries({ of, heading, nameOf }: EntriesProps) {
  const field = fieldAt(of);
  const list = useValue<readonly number[]>(of);
  const moved = useMove(of) !== undefined;
  const open = useBench((s) => (s.open?.path === of ? s.open : null));
  const openWorking = useBench((s) => s.openWorking);
  if (field?.kind !== 'list') throw new Error(`no list ${of}`);
  if (list === null || list.length === 0) return null;
  const { label, help, unit, digits } = field;
  const entry = { kind: 'quantity', label, help, unit, ...(digits ? { digits } : {}) } as const;
  return (
    <>
      <Table
        caption={label}
        columns={[
          { key: 'name', label: heading, as: 'words' },
          { key: 'value', label: 'Figure' },
        ]}
        rows={list.map((value, index) => ({
          key: nameOf(index),
          moved,
          cells: {
            name: nameOf(index),
            value: (
              <button
                type="button"
                className="cell-how"
                aria-expanded={open?.index === index}
                title="Show the workings"
                onClick={() => openWorking(open?.index === index ? null : of, index)}
              >
                {shown(entry, value)}
              </button>
            ),
          },
        }))}
      />
      {open && <Workings of={of} index={open.index} />}
    </>
  );
}
