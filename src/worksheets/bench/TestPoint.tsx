import type { Point } from '../../engine/stages/bench/point.ts';
import { useInput } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import { Workings } from '../bound/Workings.tsx';
import { Expected } from './Expected.tsx';
import { Finding } from './Finding.tsx';
import { useTestPoint } from './useTestPoint.ts';

/** A place along the rig: what to expect, what was read, what that says; workings under it. */
export function TestPoint({ point }: { point: Point }) {
  const view = useTestPoint(point);
  const table = `bench.${point.group}`;
  const open = useBench((s) =>
    s.open?.path.startsWith(`${table}.`) && s.open.index === view?.index ? s.open : null,
  );
  const read = useInput(`bench.${point.read}`).value;
  const turned = point.negative === true && typeof read === 'number' && read > 0;
  return (
    <tbody className="point" data-open={open !== null}>
      <tr>
        <th scope="row" data-as="words">
          <div className="point__head">
            <span className="point__step">{point.step}</span>
            <span className="point__name">{point.point}</span>
            <span className="point__with">{point.instrument}</span>
          </div>
        </th>
        <td data-as="words" data-label="Expected">
          {view ? <Expected table={table} view={view} /> : '–'}
        </td>
        <td data-as="words" data-label="Measured">
          {point.asVolts ? (
            <span className="point__follows">{view?.text.measured ?? 'from the power above'}</span>
          ) : (
            <>
              <Entry of={`bench.${point.read}`} form="cell" measured />
              {turned && <span className="point__with">taken as {view?.text.measured}</span>}
            </>
          )}
        </td>
        <td data-as="words" data-label="Verdict" className="point__verdict">
          {view && <Finding view={view} />}
        </td>
      </tr>
      {open && (
        <tr className="point__how">
          <td colSpan={4}>
            <Workings of={open.path} index={open.index} />
          </td>
        </tr>
      )}
    </tbody>
  );
}
