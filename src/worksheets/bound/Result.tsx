import { Figure } from '../../design/Figure.tsx';
import type { Outcome } from '../../design/marks.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useMove, useOrigin, useStage, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from './Workings.tsx';

interface ResultProps {
  /** Path of a single result: `filter.loss`. */
  of: string;
  size?: 'main' | 'normal' | 'small';
  /** Other words than the field's own label. */
  label?: string;
  verdict?: { of: Outcome; says?: string | undefined } | undefined;
}

/** A single result on the sheet: its figure, what the last change did to it, and its workings. */
export function Result({ of, size, label, verdict }: ResultProps) {
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
      label={label ?? field.label}
      symbol={field.symbol}
      value={text === '' ? null : text}
      origin={origin}
      was={move && move.before !== '' ? move.before : undefined}
      verdict={verdict}
      waits={stage?.waitsFor ? `waits for ${stage.waitsFor}` : 'not to be had'}
      onHow={text === '' ? undefined : () => openWorking(open ? null : of)}
      howOpen={open}
      {...(size === undefined ? {} : { size })}
    >
      {open && <Workings of={of} />}
    </Figure>
  );
}
