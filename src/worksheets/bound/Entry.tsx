import { CellField } from '../../design/CellField.tsx';
import { Choice } from '../../design/Choice.tsx';
import { Count } from '../../design/Count.tsx';
import { Field } from '../../design/Field.tsx';
import type { Origin } from '../../engine/fields/kinds.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { useInput } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { echoOf, prefixesOf, typicalOf, unitShown } from './echo.ts';
import { stepped } from './step.ts';

interface EntryProps {
  /** Path of the input: `filter.bandwidth`. */
  of: string;
  /** For choices: side by side, or a list. For quantities: a line in a table's cell. */
  form?: 'row' | 'list' | 'cell';
  /** What is used while it is blank, where the stage worked that out: ready to read. */
  typical?: string | undefined;
  /** How that came about, if it is no guess. */
  typicalOrigin?: Origin;
  /** What is typed here was read off a meter. */
  measured?: boolean;
  /** Where the field stands on another sheet too: an id of its own. */
  id?: string;
}

/** An input on the sheet, tied to the rig: whatever its kind. */
export function Entry(props: EntryProps) {
  const { of, form, typical, typicalOrigin = 'typical', measured = false, id = of } = props;
  const field = fieldAt(of);
  const input = useInput(of);
  const say = useBench((s) => s.say);
  if (!field) throw new Error(`no field ${of}`);
  const { text = '', problem } = input;
  const write = (next: string) => say(of, field.label, next, measured ? 'measured' : undefined);

  if (field.kind === 'choice') {
    return (
      <Choice
        id={id}
        label={field.label}
        symbol={field.symbol}
        options={Object.entries(field.options)}
        value={typeof input.value === 'string' ? input.value : null}
        onChoose={write}
        problem={problem}
        help={field.help}
        {...(form === undefined || form === 'cell' ? {} : { form })}
      />
    );
  }
  if (field.kind !== 'quantity' && field.kind !== 'count') throw new Error(`${of} is no input`);
  const from =
    typeof input.value === 'number' ? input.value : (field.default ?? field.range?.[0] ?? 0);
  const onStep = (direction: 1 | -1, coarse: boolean) =>
    write(stepped(field, from, direction, coarse));
  if (field.kind === 'count') {
    const [least, most] = field.range ?? [-Infinity, Infinity];
    return (
      <Count
        id={id}
        label={field.label}
        symbol={field.symbol}
        text={text}
        onText={write}
        onStep={onStep}
        atLeast={from <= least}
        atMost={from >= most}
        typical={typical ?? typicalOf(field)}
        problem={problem}
      />
    );
  }
  if (form === 'cell') {
    return (
      <CellField
        id={id}
        label={field.label}
        unit={unitShown(field)}
        text={text}
        onText={write}
        onStep={onStep}
        echo={echoOf(field, input)}
        problem={problem}
      />
    );
  }
  const pencilled = typical ?? typicalOf(field);
  return (
    <Field
      id={id}
      label={field.label}
      symbol={field.symbol}
      unit={unitShown(field)}
      text={text}
      onText={write}
      onStep={onStep}
      echo={echoOf(field, input)}
      problem={problem}
      origin={text.trim() === '' ? typicalOrigin : input.origin}
      typical={pencilled}
      onTypical={pencilled === undefined ? undefined : () => write('')}
      prefixes={prefixesOf(field)}
      help={field.help}
      source={field.source}
    />
  );
}
