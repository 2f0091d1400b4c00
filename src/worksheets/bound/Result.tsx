import { Figure } from '../../design/Figure.tsx';
import type { Outcome } from '../../design/marks.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useMove, useOrigin, useStage, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { stageOf } from './steps.ts';
import { Workings } from './Workings.tsx';

interface ResultProps {
  /** Path of a single result: `filter.loss`. */
  of: string;
  size?: 'main' | 'normal' | 'small';
  /** Other words than the field's own label. */
  label?: string;
  verdict?: { of: Outcome; says?: string | undefined } | undefined;
  /** What stands in its place where there is nothing to say. */
  none?: string;
}

const outcomes: readonly unknown[] = ['holds', 'close', 'fails'];

/** A single result on the sheet: its figure, what the last change did to it, and its workings. */
export function Result({ of, size, label, verdict, none = 'not to be had' }: ResultProps) {
  const field = fieldAt(of);
  const value = useValue<unknown>(of);
  const origin = useOrigin(of);
  const move = useMove(of);
  const stage = useStage(of.split('.')[0] ?? '');
  const open = useBench((s) => s.open?.path === of);
  const openWorking = useBench((s) => s.openWorking);
  if (!field) throw new Error(`no field ${of}`);
  const text = shown(field, value);
  return (
    <Figure
      id={of}
      label={label ?? field.label}
      symbol={field.symbol}
      value={text === '' ? null : text}
      origin={text === '' ? 'worked' : origin}
      was={move && move.before !== '' ? move.before : undefined}
      verdict={verdict}
      mark={field.kind === 'choice' && outcomes.includes(value) ? (value as Outcome) : undefined}
      waits={
        stage?.waitsFor
          ? `waits for ${stageOf(stage.waitsFor)?.fields.title ?? stage.waitsFor}`
          : none
      }
      onHow={text === '' ? undefined : () => openWorking(open ? null : of)}
      howOpen={open}
      {...(size === undefined ? {} : { size })}
    >
      {open && <Workings of={of} />}
    </Figure>
  );
}
