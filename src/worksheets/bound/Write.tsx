import { Blank } from '../../design/Blank.tsx';
import { Told } from '../../design/Told.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useInput, useMove, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { echoOf, typicalOf, unitShown } from './echo.ts';
import { stepped } from './step.ts';

const bareNumber = /^[\s\d.,]+$/;

/** A number in a sheet's first sentence that can be written over. */
export function Write({ of }: { of: string }) {
  const field = fieldAt(of);
  const input = useInput(of);
  const say = useBench((s) => s.say);
  if (field?.kind !== 'quantity' && field?.kind !== 'count') throw new Error(`no number ${of}`);
  const write = (next: string) => say(of, field.label, next);
  const from = typeof input.value === 'number' ? input.value : (field.default ?? 0);
  return (
    <Blank
      id={`lead:${of}`}
      label={field.label}
      text={input.text ?? ''}
      onText={write}
      onStep={(direction, coarse) => write(stepped(field, from, direction, coarse))}
      echo={field.kind === 'quantity' ? echoOf(field, input) : undefined}
      typical={typicalOf(field)}
      unit={
        field.kind === 'quantity' && bareNumber.test(input.text ?? '')
          ? unitShown(field)
          : undefined
      }
      problem={input.problem}
    />
  );
}

/** A figure in a sheet's first sentence, as worked or as chosen. */
export function Read({ of, or = '…' }: { of: string; or?: string }) {
  const field = fieldAt(of);
  const value = useValue<unknown>(of);
  const move = useMove(of);
  if (!field) throw new Error(`no field ${of}`);
  const text = shown(field, value);
  return <Told of={text === '' ? or : text} was={move?.before || undefined} />;
}
