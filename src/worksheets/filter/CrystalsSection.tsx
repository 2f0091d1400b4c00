import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';

/** Which crystals of the bag stand where, and how their differences are dealt with. */
export function CrystalsSection() {
  const chosen = useValue<string>('filter.chosen');
  const alignedAt = useValue<number>('filter.alignedAt');
  return (
    <Section
      title="The crystals"
      margin={
        <Note title="How alike must they be?">
          <p>
            Within a tenth of the width hardly anything is seen; a fifth costs a decibel of ripple,
            a half five. The width hardly changes. The bag can choose them and their order.
          </p>
        </Note>
      }
    >
      <Pasted of="filter.chosen" lines={1} example="7 12 3 9 1 22" />
      {chosen !== null && (
        <>
          <Entry of="filter.aligning" form="row" />
          <Rows of="filter.places" />
          {alignedAt !== null && (
            <Figures>
              <Result of="filter.alignedAt" />
            </Figures>
          )}
        </>
      )}
    </Section>
  );
}
