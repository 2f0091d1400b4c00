import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';

/** The second oscillator, its mixer, and the sideband pushed through the arithmetic. */
export function ConvertLeaf() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <SheetFrame
      stage="convert"
      main={converts ? <Result of="convert.oscillator" size="main" /> : undefined}
      lead={
        converts ? (
          <>
            A conversion oscillator at <Read of="convert.oscillator" or="a frequency still open" />{' '}
            puts the suppressed carrier at <Read of="convert.lands" or="no place yet" />, and{' '}
            <Read of="convert.comesOut" or="one sideband" /> comes out.
          </>
        ) : (
          <>
            This rig’s filter works at the operating frequency itself, so nothing is converted. The
            Plan sheet can change that.
          </>
        )
      }
    >
      {converts && <Converted />}
    </SheetFrame>
  );
}

function Converted() {
  return (
    <>
      <Section
        title="The conversion oscillator"
        margin={
          <Note title="Sum or difference">
            <p>
              The sideband turns round only where the filter’s signal is subtracted from the
              oscillator. Lists of pairs that are said to flip it are often wrong; the lines below
              are the arithmetic itself.
            </p>
          </Note>
        }
      >
        <Entry of="plan.side" form="list" />
        <Fields>
          <Entry of="convert.oscillatorGiven" />
          <Entry of="convert.span" />
        </Fields>
        <Say of="convert.sum" />
        <Figures>
          <Result of="convert.lands" />
          <Result of="convert.off" />
          <Result of="convert.comesOut" />
          <Result of="convert.oscillatorTop" />
        </Figures>
      </Section>
      <Section
        title="Three tones, line by line"
        margin={
          <Note title="On the board">
            <p>
              Do it with any rig: a tone up in the voice that comes out further below the suppressed
              carrier is the lower sideband, whatever the label says.
            </p>
          </Note>
        }
      >
        <Rows of="convert.tones" caption="From the voice to the antenna" />
      </Section>
      <Section
        title="What else reaches the mixer’s output"
        margin={
          <Note title="The band-pass has work to do">
            <p>
              Image, oscillator and what leaks through lie at known places. The next leaf shows what
              a band-pass leaves of them.
            </p>
          </Note>
        }
      >
        <Figures>
          <Result of="convert.image" />
          <Result of="convert.halfway" />
          <Result of="convert.carrierLeft" />
          <Result of="convert.oscillatorLeft" />
        </Figures>
        <Disclosure summary="The mixer: levels, loss and balance">
          <Fields>
            <Entry of="convert.oscillatorLevel" />
            <Entry of="convert.signalLevel" />
            <Entry of="convert.mixerLoss" />
            <Entry of="convert.oscillatorIsolation" />
            <Entry of="convert.signalIsolation" />
          </Fields>
        </Disclosure>
      </Section>
    </>
  );
}
