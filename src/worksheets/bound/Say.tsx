import { Saying } from '../../design/Saying.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { useMove, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from './Workings.tsx';

/** A worked sentence on the sheet: `transmit.sinkAdvice`. Nothing where there is none. */
export function Say({ of, label }: { of: string; label?: string }) {
  const field = fieldAt(of);
  const text = useValue<string>(of);
  const moved = useMove(of) !== undefined;
  const open = useBench((s) => s.open?.path === of);
  const openWorking = useBench((s) => s.openWorking);
  if (field?.kind !== 'words') throw new Error(`no words ${of}`);
  if (text === null || text === '') return null;
  return (
    <Saying
      label={label ?? field.label}
      text={text}
      moved={moved}
      onHow={() => openWorking(open ? null : of)}
      howOpen={open}
    >
      {open && <Workings of={of} />}
    </Saying>
  );
}
