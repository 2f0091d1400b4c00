import { useMemo, useState } from 'react';
import type { MapPlace } from '../../design/chart/MapChart.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { DayAnswer } from '../../engine/errands/day/dayAnswer.ts';
import { useErrand } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Errand } from '../bound/Errand.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Cell } from './Cell.tsx';
import { DayPicture, type Shows } from './DayPicture.tsx';
import './day.css';

/** Pause after the last change before the day is worked anew, ms. */
const PAUSE = 300;

/** A day of the path: which distance is open at which hour. */
export function DayLeaf() {
  const errand = useErrand<DayAnswer>('day', { auto: PAUSE });
  const { answer } = errand;
  return (
    <SheetFrame
      stage="day"
      lead={
        <>
          Over <Write of="path.distance" /> speech gets through at{' '}
          <b>{answer === null ? 'hours still to be found' : hoursWords(answer.hoursOpen)}</b>, in{' '}
          <Read of="path.season" /> and with a sunspot number of <Write of="path.sunspots" />.
        </>
      }
    >
      <Section
        margin={
          <>
            <Note title="A day on one page">
              <p>
                By day the lowest layer takes its toll, and near distances are open; at night the
                high layer thins out, near stations vanish and far ones come in. Touch a cell to see
                its sum.
              </p>
            </Note>
            <Note title="A typical day">
              <p>
                Medians of a month, ten decibels and a quarter of the critical frequency either way
                (common practice, no source). Today’s ionosonde reading, typed in, beats all of it
                for the hour it was taken.
              </p>
            </Note>
          </>
        }
      >
        <Errand of={errand} what="A day of the path" run="Work the day" />
        {answer && <Day answer={answer} />}
      </Section>
      <Section title="What the day depends on">
        <Entry of="path.season" form="row" />
        <Fields>
          <Entry of="path.latitude" />
          <Entry of="path.sunspots" />
          <Entry of="path.lowest" />
        </Fields>
        <Entry of="antenna.kind" form="list" />
        <Entry of="feed.line" form="list" />
        <Entry of="path.farPlace" form="list" />
      </Section>
    </SheetFrame>
  );
}

/** The picture, and the cell that is looked at: at first the one that Path works with. */
function Day({ answer }: { answer: DayAnswer }) {
  const time = useValue<number>('path.hour') ?? 0;
  const distance = useValue<number>('path.distance') ?? 0;
  const [shows, setShows] = useState<Shows>('units');
  const [picked, setPicked] = useState<MapPlace | null>(null);
  const marked = useMemo(
    () => ({ column: Math.floor(time / 3600) % 24, row: nearest(answer.distances, distance) }),
    [answer, time, distance],
  );
  const at = picked ?? marked;
  return (
    <>
      <DayPicture
        answer={answer}
        shows={shows}
        onShows={setShows}
        marked={marked}
        at={at}
        onPick={setPicked}
      />
      <Cell answer={answer} at={at} onPick={setPicked} />
      <p>{answer.how}</p>
    </>
  );
}

function nearest(distances: Float64Array, wanted: number): number {
  let best = 0;
  distances.forEach((d, i) => {
    if (Math.abs(Math.log(d / wanted)) < Math.abs(Math.log((distances[best] ?? 1) / wanted))) {
      best = i;
    }
  });
  return best;
}

const hoursWords = (hours: number): string => {
  if (hours === 24) return 'all hours';
  if (hours === 0) return 'no hour';
  return hours === 1 ? 'one hour of the day' : `${hours} hours of the day`;
};
