import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { FrontPicture } from './FrontPicture.tsx';

/** The band-pass between mixer and driver, and between antenna and mixer on receive. */
export function FrontLeaf() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <SheetFrame
      stage="front"
      main={converts ? <Result of="front.loss" size="main" /> : undefined}
      lead={
        converts ? (
          <>
            A band-pass <Read of="front.width" or="of a width still open" /> wide loses{' '}
            <Read of="front.loss" or="still unknown power" /> and holds the image{' '}
            <Read of="front.imageRejection" or="not yet" /> down.
          </>
        ) : (
          <>This rig converts nothing, so there is nothing to part here.</>
        )
      }
    >
      {converts && <Parts />}
    </SheetFrame>
  );
}

function Parts() {
  const three = useValue<number>('front.circuits') === 3;
  return (
    <>
      <Section
        title="What it lets through"
        margin={
          <Note title="One filter, both ways">
            <p>
              On receive it keeps the image from the mixer; on transmit it keeps oscillator and
              image from the driver. A few milliwatts of either spoil the final’s output.
            </p>
          </Note>
        }
      >
        <FrontPicture />
        <Fields>
          <Entry of="front.circuits" />
          <Entry of="front.widthGiven" />
          <Entry of="front.coilQ" />
          <Entry of="front.wanted" />
        </Fields>
        <Figures>
          <Result of="front.imageRejection" />
          <Result of="front.halfwayRejection" />
          <Result of="front.loadedQ" />
        </Figures>
      </Section>
      <Section title="What is left behind it">
        <Rows of="front.leftovers" caption="Against the wanted signal" />
      </Section>
      <Section
        title="The parts"
        margin={
          <Note title="Tuning it">
            <p>
              Trim each circuit for most output at the operating frequency, then once more: they
              pull each other. Coils at right angles, or toroids, so that they couple only through
              the capacitor.
            </p>
          </Note>
        }
      >
        <Figures>
          <Result of="front.coil" />
          <Result of="front.endC" />
          {three && <Result of="front.middleC" />}
          <Result of="front.couple" />
          <Result of="front.feed" />
        </Figures>
        <Entry of="front.fitted" form="row" />
        <Disclosure summary="Coil, ends, and the exact couplings">
          <Fields>
            <Entry of="front.coilGiven" />
            <Entry of="front.end" />
          </Fields>
          <Figures>
            <Result of="front.width" />
            <Result of="front.coupleExact" />
            <Result of="front.feedExact" />
          </Figures>
        </Disclosure>
      </Section>
    </>
  );
}
