import { useState } from 'react';
import { Button } from '../../design/Button.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Slider } from '../../design/Slider.tsx';
import { format, formatTrimmed } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import { ohmsAt, placeOf } from './along.ts';

const SOURCE = 'filter.sourceResistance';
const LOAD = 'filter.loadResistance';
const SOURCE_X = 'filter.sourceReactance';
const LOAD_X = 'filter.loadReactance';

/** Both ends of the filter to drag, together or apart, or to type. */
export function Drag() {
  const [together, setTogether] = useState(true);
  const sayAll = useBench((s) => s.sayAll);
  const source = useEnd('filter.ends', SOURCE, 'ends.sourceSeen', 'ends.sourceSeenX');
  const load = useEnd('filter.endsLoad', LOAD, 'ends.loadSeen', 'ends.loadSeenX');
  if (source === null || load === null) return null;
  const write = (end: typeof source, position: number) => {
    const ohms = ohmsAt(position, end.wants);
    // Where it was designed for, nothing need be said.
    return ohms === end.wants ? '' : formatTrimmed(ohms, 'Ω', 3);
  };
  const move = (which: 'source' | 'load') => (position: number) => {
    const texts: Record<string, string> = {};
    if (together || which === 'source') texts[SOURCE] = write(source, position);
    if (together || which === 'load') texts[LOAD] = write(load, position);
    const label = together ? 'Both ends' : which === 'source' ? 'Fed from' : 'Works into';
    sayAll(texts, label, which === 'source' ? SOURCE : LOAD);
  };
  const say = (label: string, texts: Record<string, string>) => () => sayAll(texts, label);
  const real = source.real !== null && load.real !== null;
  return (
    <>
      <div className="sliders">
        <Slider
          id={`drag:${SOURCE}:slide`}
          label="Fed from"
          position={source.position}
          says={source.says}
          marks={source.marks}
          onMove={move('source')}
        />
        <Slider
          id={`drag:${LOAD}:slide`}
          label="Works into"
          position={load.position}
          says={load.says}
          marks={load.marks}
          onMove={move('load')}
        />
      </div>
      <div className="slider__tools">
        <Button pressed={together} onPress={() => setTogether(!together)}>
          Move both together
        </Button>
        <Button onPress={say('Right ends', both('', ''))}>Right ends</Button>
        <Button
          disabled={!real}
          onPress={say('Real ends', {
            [SOURCE]: formatTrimmed(source.real ?? 0, 'Ω', 4),
            [LOAD]: formatTrimmed(load.real ?? 0, 'Ω', 4),
            [SOURCE_X]: source.realX === 0 ? '' : formatTrimmed(source.realX, 'Ω', 4),
            [LOAD_X]: load.realX === 0 ? '' : formatTrimmed(load.realX, 'Ω', 4),
          })}
        >
          What is really there
        </Button>
        <Button onPress={say('Straight into 50 Ω', both('50', ''))}>Straight into 50 Ω</Button>
      </div>
      <Fields>
        <Entry
          of={SOURCE}
          id={`drag:${SOURCE}`}
          typical={source.pencilled}
          typicalOrigin="worked"
        />
        <Entry of={SOURCE_X} id={`drag:${SOURCE_X}`} />
        <Entry of={LOAD} id={`drag:${LOAD}`} typical={load.pencilled} typicalOrigin="worked" />
        <Entry of={LOAD_X} id={`drag:${LOAD_X}`} />
      </Fields>
    </>
  );
}

/** Both ends at the same resistance and reactance. */
const both = (ohms: string, reactance: string): Record<string, string> => ({
  [SOURCE]: ohms,
  [LOAD]: ohms,
  [SOURCE_X]: reactance,
  [LOAD_X]: reactance,
});

/** One end as it stands on its slider. */
function useEnd(wantsPath: string, path: string, realPath: string, realXPath: string) {
  const wants = useValue<number>(wantsPath);
  const typed = useValue<number>(path);
  const real = useValue<number>(realPath);
  const realX = useValue<number>(realXPath) ?? 0;
  if (wants === null) return null;
  return {
    wants,
    real,
    realX,
    position: placeOf(typed ?? wants, wants),
    says: format(typed ?? wants, 'Ω', 3),
    pencilled: format(wants, 'Ω', 3),
    marks: [
      { at: 0, label: '⅛' },
      { at: placeOf(wants / 2, wants), label: '½' },
      { at: 0.5, label: 'right' },
      { at: placeOf(2 * wants, wants), label: '×2' },
      { at: 1, label: '×8' },
    ],
  };
}
