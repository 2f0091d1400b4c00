import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Spreads } from './Spreads.tsx';

/** What the meter should show, what spreading and squeezing do, and what to do with a reading. */
export function Metered() {
  return (
    <Section
      title="Measure, then spread or squeeze"
      margin={
        <>
          <Note title="More than a turn in it">
            <p>
              Ten turns pushed together have measured two thirds more than the same ten spread out.
              Spread to lose inductance, squeeze to gain; take a turn off only if that is not
              enough.
            </p>
          </Note>
          <Note title="Can the meter do it?">
            <p>
              Many inductance meters work at audio frequency, where one microhenry is some
              thousandths of an ohm, and their leads have tenths of a microhenry themselves: short
              them and take that off. A known capacitor and a dip show the coil at work.
            </p>
          </Note>
        </>
      }
    >
      <Spreads />
      <Fields>
        <Entry of="windings.testCapacitor" />
      </Fields>
      <Pasted of="output.measured" measured lines={4} example="L1 1.51 µH" />
      <Rows
        of="windings.coils"
        caption="What to do"
        columns={['label', 'l', 'dip', 'own', 'advice']}
      />
      <Rows
        of="windings.coils"
        caption="What it can be"
        narrow="scroll"
        columns={['label', 'lBelow', 'lAt', 'lAbove', 'lBunched', 'lLow', 'lHigh']}
      />
      <Disclosure summary="Spreading in figures">
        <Rows of="windings.spreads" columns={['label', 'share', 'l', 'rise']} />
      </Disclosure>
    </Section>
  );
}
