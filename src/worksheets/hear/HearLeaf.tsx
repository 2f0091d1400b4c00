import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { HearAnswer } from '../../engine/errands/hear/hearAnswer.ts';
import { useAnswer } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Listen } from './Listen.tsx';
import { OffTune } from './OffTune.tsx';
import { Source } from './Source.tsx';
import { SpectrumPicture } from './SpectrumPicture.tsx';
import './hear.css';

/** What a voice sounds like through the rig, over the path, in another receiver. */
export function HearLeaf() {
  const answer = useAnswer<HearAnswer>('hear');
  const final = useValue<string>('hear.final');
  const quiet = useValue<string>('hear.noise') === 'none';
  return (
    <SheetFrame
      stage="hear"
      main={<Result of={quiet ? 'hear.toneAs' : 'hear.ratioUsed'} size="main" />}
      lead={
        <>
          A voice{' '}
          {quiet ? (
            'without noise'
          ) : (
            <>
              over <Write of="path.distance" />, <Read of="hear.ratioUsed" or="an unknown margin" />{' '}
              over the noise
            </>
          )}
          , in a receiver that is off tune by <Write of="hear.offTune" />: this is what it sounds
          like.
        </>
      }
    >
      <Section
        margin={
          <>
            <Note title="Change while it plays">
              <p>
                All filters run at once and equally loud; only which one is heard changes. Begin
                with the voice as spoken, then A. To hear others, set them beside it on{' '}
                <a href="#compare">Compare</a>.
              </p>
            </Note>
            <Note title="Volume">
              <p>Begin with the volume down, with headphones above all.</p>
            </Note>
          </>
        }
      >
        <Listen />
        <Source />
      </Section>
      <Section
        title="Off tune"
        margin={
          <Note title="Hertz, not semitones">
            <p>
              A single sideband has no carrier to go by. Off tune, all tones move by the same number
              of hertz, so harmonics of a voice are no longer multiples of each other.
            </p>
          </Note>
        }
      >
        <OffTune />
      </Section>
      <Section title="Over the path">
        <Entry of="hear.noise" form="row" />
        {!quiet && (
          <Fields>
            <Entry of="hear.ratio" />
          </Fields>
        )}
        <Entry of="hear.fading" form="list" />
        <Figures>
          <Result of="hear.meanRatio" />
          <Result of="hear.fadingUsed" />
        </Figures>
      </Section>
      <Section
        title="Through which rigs"
        margin={
          <Note title="Twice through">
            <p>
              Where both stations have the same filter its edges count twice: −6 dB become −12 dB.
              What is lost at the low edge makes a voice thin, at the high edge dull.
            </p>
          </Note>
        }
      >
        <Entry of="hear.ways" form="list" />
        <Entry of="hear.final" form="row" />
        {answer && final === 'exact' && answer.final === 'knee' && (
          <p className="hear__stand-in">
            The final’s own curve is not there yet; a plain knee stands in for it.
          </p>
        )}
        <Fields>
          <Entry of="hear.over" />
          {final !== 'straight' && <Entry of="hear.knee" />}
        </Fields>
        <Disclosure summary="Edges of the audio stages">
          <Fields>
            <Entry of="hear.micLow" />
            <Entry of="hear.micHigh" />
            <Entry of="hear.speakerLow" />
            <Entry of="hear.speakerHigh" />
          </Fields>
        </Disclosure>
      </Section>
      {answer && (
        <Section title="Spectrum">
          <SpectrumPicture answer={answer} />
        </Section>
      )}
    </SheetFrame>
  );
}
