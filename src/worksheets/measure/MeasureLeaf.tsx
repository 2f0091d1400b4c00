import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';

import { FoundCrystal } from './FoundCrystal.tsx';
import { IfOdd } from './IfOdd.tsx';
import { JigAndSteps } from './JigAndSteps.tsx';
import { Round } from './Round.tsx';
import { Taken } from './Taken.tsx';

/** Readings of one crystal on the bench, and what they make of it. */
export function MeasureLeaf() {
  const method = useValue<string>('measure.method') ?? 'none';
  const readings = method === 'fixture' || method === 'shift' || method === 'pair';
  return (
    <SheetFrame
      stage="measure"
      main={<Result of="measure.cm" size="main" none="wants readings" />}
      lead={<Lead method={method} />}
    >
      <Section title="How it is measured" margin={<WhichWay />}>
        <Entry of="measure.method" form="row" />
      </Section>
      {readings && (
        <>
          <Section title="The jig, and what to do" margin={<Drive />}>
            <JigAndSteps method={method} />
          </Section>
          <Section title="The readings" margin={<IfOdd method={method} />}>
            <Taken method={method} />
            <Fields title="C0, which every way needs">
              <Entry of="measure.c0Read" measured />
              <Entry of="measure.meterStray" measured />
              {method !== 'shift' && <Entry of="measure.beside" />}
            </Fields>
            <Round method={method} />
          </Section>
          <Section title="The crystal" margin={<Shortcut />}>
            <FoundCrystal />
          </Section>
          <Section title="How sure is it?" margin={<Squares />}>
            <Say of="measure.weakest" />
            <Rows
              of="measure.doubts"
              columns={[
                'reading',
                'error',
                'cm',
                'lm',
                'fs',
                ...(method === 'fixture' ? ['rm', 'qu'] : []),
              ]}
            />
            <Disclosure summary="How far each kind of reading may be off">
              <Fields>
                <Entry of="measure.frequencyError" />
                {method === 'fixture' && <Entry of="measure.levelError" />}
                <Entry of="measure.capacitanceError" />
                {method === 'fixture' && <Entry of="measure.jigError" />}
                {method === 'shift' && <Entry of="measure.oscillatorError" />}
              </Fields>
            </Disclosure>
          </Section>
        </>
      )}
    </SheetFrame>
  );
}

function Lead({ method }: { method: string }) {
  if (method === 'none') {
    return <>Nothing has been read yet. With a counter or a sweep the guesses on Quartz can go.</>;
  }
  if (method === 'sweep') {
    return (
      <>
        A whole sweep is fitted on its own <a href="#sweep">leaf</a>; Quartz takes what it finds.
      </>
    );
  }
  return (
    <>
      By these readings the crystal has <Read of="measure.lm" /> and <Read of="measure.cm" /> at{' '}
      <Read of="measure.fs" />, give or take <Read of="measure.cmError" /> in Cm.
    </>
  );
}

function WhichWay() {
  return (
    <Note title="Which way?">
      <p>
        A fixture gives everything, Rm and Q too. The oscillator wants no more than a counter, and
        says nothing of loss. Two resonances are quickly read, and no better than C0 is known.
      </p>
      <p>
        What is found here <a href="#quartz">Quartz</a> takes over, save what is typed there.
      </p>
    </Note>
  );
}

function Drive() {
  return (
    <Caution>
      No more than 0 dBm from the generator, less for small cans. Too much drive shifts frequency
      and resistance while it lasts, and can crack the plate. Let a crystal cool after soldering or
      holding it: a warm one reads hertz off.
    </Caution>
  );
}

function Shortcut() {
  return (
    <Note title="Why not the shortcut?">
      <p>
        The usual formulas leave out the holder, and the one for oscillators the oscillator too.
        What that costs here stands in the last column.
      </p>
    </Note>
  );
}

function Squares() {
  return (
    <Note title="Doubts add as squares">
      <p>
        The crystal is worked anew with each reading a little higher and lower. The largest effect
        rules: halving a small one changes nothing.
      </p>
    </Note>
  );
}
