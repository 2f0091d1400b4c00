import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** What goes past the filter, and how to build it so that little does. */
export function LeakageSection() {
  const floor = useValue<number>('filter.floor');
  return (
    <Section
      title="Past the filter"
      margin={
        <>
          <Note title="How to tell">
            <p>
              A stopband that lies flat, however far out, is leakage and not the filter. 60 dB is
              enough for transmitting; a receiver wants 80.
            </p>
          </Note>
          <Note title="How to build it">
            <p>
              Crystals in one straight line over an unbroken ground plane, input and output at its
              far ends. All cans soldered to ground, quickly, at their rims. A wall of sheet metal
              across the board between the ends, coaxial cable to and from, and no lead of the one
              end near the other. Ground the matching at its own end.
            </p>
          </Note>
        </>
      }
    >
      <Fields>
        <Entry of="filter.leakageDb" />
        <Entry of="filter.leakage" />
      </Fields>
      {floor !== null && (
        <Figures>
          <Result of="filter.floor" />
          <Result of="filter.leakageFound" />
        </Figures>
      )}
    </Section>
  );
}
