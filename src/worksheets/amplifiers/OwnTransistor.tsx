import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';

/** A small transistor that isn't on the list, from its data sheet. */
export function OwnTransistor() {
  return (
    <Section
      title="A transistor of your own"
      margin={
        <Note title="From the data sheet">
          <p>
            Typical figures rather than guaranteed ones, hFE excepted: its least and most tell how
            far the current may wander. Choose “My own” at any stage above, and these count there.
          </p>
        </Note>
      }
    >
      <Disclosure summary="Its figures">
        <Fields>
          <Entry of="transmit.ownSmallHfe" />
          <Entry of="transmit.ownSmallHfeLeast" />
          <Entry of="transmit.ownSmallHfeMost" />
          <Entry of="transmit.ownSmallTransit" />
          <Entry of="transmit.ownSmallTransitAmps" />
          <Entry of="transmit.ownSmallTransitVolts" />
          <Entry of="transmit.ownSmallCob" />
          <Entry of="transmit.ownSmallCobVolts" />
          <Entry of="transmit.ownSmallCib" />
          <Entry of="transmit.ownSmallVbe" />
          <Entry of="transmit.ownSmallVbeAmps" />
          <Entry of="transmit.ownSmallEarly" />
          <Entry of="transmit.ownSmallBase" />
          <Entry of="transmit.ownSmallVceo" />
          <Entry of="transmit.ownSmallToAmbient" />
        </Fields>
      </Disclosure>
    </Section>
  );
}
