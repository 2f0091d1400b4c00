import { Fields } from '../../design/Fields.tsx';
import { Slider } from '../../design/Slider.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

const PATH = 'hear.offTune';
const MOST = 300;
/** Steps of the slider, Hz. */
const STEP = 5;

/** The receiver's tuning, to turn while listening. */
export function OffTune() {
  const off = useValue<number>(PATH) ?? 0;
  const sayAll = useBench((s) => s.sayAll);
  const move = (position: number) => {
    const hertz = Math.round((2 * position - 1) * (MOST / STEP)) * STEP;
    sayAll({ [PATH]: hertz === 0 ? '' : String(hertz) }, 'Receiver off tune by', PATH);
  };
  return (
    <>
      <Slider
        id={`${PATH}:slide`}
        label="The receiver’s carrier against the sender’s"
        position={(off / MOST + 1) / 2}
        says={format(off, 'Hz', 3)}
        marks={[-300, -200, -100, 0, 100, 200, 300].map((at) => ({
          at: (at / MOST + 1) / 2,
          label: String(at).replace('-', '−'),
        }))}
        onMove={move}
      />
      <Fields>
        <Entry of={PATH} />
        <Result of="hear.toneAs" />
      </Fields>
    </>
  );
}
