import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** What the receiver takes from the supply. */
export function Current() {
  return (
    <Section
      title="What it draws"
      margin={
        <Note>
          <p>
            The quiet current is the first thing to measure on a finished board, with the supply’s
            limit at 0.2 A. Bench expects this figure.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="receive.current" />
        <Result of="receive.currentListening" />
      </Figures>
      <Fields>
        <Entry of="receive.preampCurrent" />
        <Entry of="receive.oscillatorCurrent" />
      </Fields>
    </Section>
  );
}
