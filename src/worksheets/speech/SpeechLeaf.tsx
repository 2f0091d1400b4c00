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
import { Read, Write } from '../bound/Write.tsx';
import { BandsPicture } from './BandsPicture.tsx';
import { IndexPicture } from './IndexPicture.tsx';

/** How much of what carries meaning gets through, and what an edge of the filter is worth. */
export function SpeechLeaf() {
  const quiet = useValue<number>('hear.ratioUsed') === null;
  const wanted = useValue<string>('hear.noise') !== 'none';
  return (
    <SheetFrame
      stage="speech"
      main={<Result of="speech.index" size="main" />}
      lead={
        <>
          {quiet ? (
            `${wanted ? 'Path has no signal over noise to give: reckoned without' : 'Without'} noise, `
          ) : (
            <>
              Over <Write of="path.distance" />, <Read of="hear.ratioUsed" /> over the noise,{' '}
            </>
          )}
          <Read of="speech.share" /> of what this filter lets through stays audible. By the
          standard’s marks such a link is <Read of="speech.grade" />.
        </>
      }
    >
      <Section
        margin={
          <Note title="What the index counts">
            <p>
              Speech has bands that carry more meaning and bands that carry less. In each of them
              the part that stands over the noise counts; all together make the index. It says how
              much gets through, not how pleasant it is: <a href="#hear">listen</a> to that.
            </p>
          </Note>
        }
      >
        <BandsPicture />
        <Figures>
          <Result of="speech.best" />
          <Result of="speech.share" />
          <Result of="speech.grade" />
        </Figures>
        <Disclosure summary="Band by band">
          <Rows of="speech.bands" />
        </Disclosure>
      </Section>
      <Section
        title="If an edge moves"
        margin={
          <Note title="Lows cost power">
            <p>
              Most of a voice’s power lies under 500 Hz and most of its meaning over 1 kHz. With the
              peak power given, more lows leave less for the rest: over a noisy path a thin voice is
              understood farther.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="speech.more" />
        </Fields>
        <Rows of="speech.edges" />
        <IndexPicture />
      </Section>
    </SheetFrame>
  );
}
