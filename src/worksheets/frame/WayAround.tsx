import { Drawing, type DrawnBlock } from '../../design/drawing/Drawing.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { leavesOf, sheetOf, sheets } from '../../engine/rig/leaves.ts';
import { shown } from '../../engine/rig/moved.ts';
import { stages } from '../../engine/rig/stages.ts';
import { valueAt } from '../../engine/rig/worked.ts';
import { standing, useMoves, useWorked } from '../../store/hooks.ts';
import { type SheetKey, useBench } from '../../store/store.ts';
import { keyFigures } from './keyFigures.ts';

/** The drawing of the rig with its live figures: the way from sheet to sheet. */
export function WayAround() {
  const current = useBench((s) => s.sheet);
  const show = useBench((s) => s.show);
  const worked = useWorked();
  const moves = useMoves();
  const blocks: DrawnBlock[] = sheets.map((key) => ({
    key,
    label: stages.find((s) => s.fields.key === key)?.fields.title ?? key,
    figures: (keyFigures[key] ?? []).flatMap(({ path, word }) => {
      const field = fieldAt(path);
      const text = field ? shown(field, valueAt(worked, path)) : '';
      return text === '' ? [] : [word === undefined ? text : `${word} ${text}`];
    }),
    state: standing(worked.stages[key]),
    moved: moves.some((move) => leavesOf(key).some((leaf) => move.path.startsWith(`${leaf}.`))),
  }));
  const choose = (key: string) => {
    show(key as SheetKey);
    window.scrollTo(0, 0);
  };
  return <Drawing blocks={blocks} current={sheetOf(current)} onChoose={choose} />;
}
