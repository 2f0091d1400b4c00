import { Choice } from '../../design/Choice.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { useInput, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import './sweep.css';

interface ColumnRow {
  readonly column: number;
  readonly name: string;
  readonly taken: string;
}

/** The sweep as text, what was understood of it, and which columns to take instead. */
export function TheText() {
  const rows = useValue<number>('sweep.rows');
  const columns = useValue<readonly ColumnRow[]>('sweep.columns');
  const echo = rows === null ? undefined : `${rows} rows`;
  return (
    <>
      <Pasted
        of="sweep.file"
        lines={7}
        example={'# MHz S DB R 50\n8.998000  −0.1 −3.2  −26.1 84.7  0 0  0 0\n…'}
        files=".s1p,.s2p,.csv,.tsv,.txt,text/plain,text/csv"
        echo={echo}
        measured
      />
      {columns !== null && (
        <>
          <Say of="sweep.format" />
          {rows !== null && (
            <Figures>
              <Result of="sweep.rows" size="small" />
              <Result of="sweep.from" size="small" />
              <Result of="sweep.to" size="small" />
              <Result of="sweep.step" size="small" />
            </Figures>
          )}
          <Rows of="sweep.notices" columns={['says', 'lines']} />
          <Disclosure summary="Which columns are which">
            <Rows of="sweep.columns" columns={['name', 'taken', 'first', 'last', 'column']} />
            <div className="sweep-columns">
              <Column of="sweep.columnFrequency" columns={columns} />
              <Entry of="sweep.unit" form="list" />
              <Column of="sweep.columnLevel" columns={columns} />
              <Entry of="sweep.columnsAre" form="list" />
              <Column of="sweep.columnSecond" columns={columns} />
            </div>
          </Disclosure>
        </>
      )}
    </>
  );
}

/** Which column to take, by name. */
function Column({ of, columns }: { of: string; columns: readonly ColumnRow[] }) {
  const field = fieldAt(of);
  const { text = '', problem } = useInput(of);
  const say = useBench((s) => s.say);
  const options = [
    ['', 'as guessed'] as const,
    ...columns.map(({ column, name }) => [`${column}`, `${column}: ${name}`] as const),
  ];
  const known = options.some(([key]) => key === text)
    ? options
    : [...options, [text, text] as const];
  return (
    <Choice
      id={of}
      label={field?.label ?? of}
      options={known}
      value={text}
      onChoose={(next) => say(of, field?.label ?? of, next)}
      form="list"
      problem={problem}
    />
  );
}
