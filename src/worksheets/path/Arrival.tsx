import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { ReachPicture } from './ReachPicture.tsx';

/** The answer: what report the other operator gives, how sure that is, and how far it carries. */
export function Arrival() {
  return (
    <>
      <Section
        title="What the other station hears"
        margin={
          <>
            <Note title="One figure, a wide guess">
              <p>
                Ten decibels either way are the least to reckon with: around a plain S7 that is from
                S5 to nearly S9. Believe the spread, not the tenths.
              </p>
            </Note>
            <Note title="Noise decides">
              <p>
                The report says how far the needle moves; signal over noise says whether speech is
                understood. In a noisy street S5 may be lost, in a quiet field S2 is a contact.
              </p>
            </Note>
          </>
        }
      >
        <Entry of="path.route" form="list" />
        <Fields>
          <Entry of="path.distance" />
          <Entry of="path.spread" />
        </Fields>
        <Figures>
          <Result of="path.snr" />
          <Result of="path.snrLow" />
          <Result of="path.snrHigh" />
          <Result of="path.speech" />
          <Result of="path.speechLow" />
          <Result of="path.speechHigh" />
        </Figures>
        <Say of="path.verdict" />
        <Say of="path.cause" />
      </Section>
      <Section>
        <ReachPicture />
      </Section>
      <Section
        title="Is that enough for speech?"
        margin={
          <Note title="Why in 1 Hz?">
            <p>
              The standard states its grades for a bandwidth of 1 Hz, so that any receiver can be
              held against them. The filter’s own bandwidth takes it from there.
            </p>
          </Note>
        }
      >
        <Rows of="path.grades" />
        <Figures>
          <Result of="path.density" />
          <Result of="path.received" />
          <Result of="path.noise" />
          <Result of="path.field" />
          <Result of="path.sUnits" size="small" />
          <Result of="path.overS9" size="small" />
        </Figures>
      </Section>
    </>
  );
}
