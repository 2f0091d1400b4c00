import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Rows } from '../bound/Rows.tsx';

/** What to buy and wind, and what it has to bear. */
export function Parts() {
  return (
    <Section
      title="The parts"
      margin={
        <>
          <Note title="Which capacitors?">
            <p>
              C0G (NP0) ceramic, silver mica or polystyrene. Other ceramics lose power here and get
              hot.
            </p>
          </Note>
          <Note title="Coils decide">
            <p>
              Filters reckoned with a Q of 200 have come out with 50.{' '}
              <a href="#windings">Windings</a> estimates it for the core and wire that you have.
            </p>
          </Note>
        </>
      }
    >
      <Entry of="output.fitted" form="row" />
      <Rows of="output.elements" columns={['label', 'part', 'exactC', 'fittedC', 'l', 'rating']} />
      <Fields>
        <Entry of="output.coilQ" />
        <Entry of="output.capacitorQ" />
        <Entry of="output.selfCapacitance" />
      </Fields>
      <Rows
        of="output.elements"
        caption="What each part bears at full power"
        columns={['label', 'volts', 'amps', 'heat']}
      />
      <Disclosure summary="The coils, as they go to Windings">
        <Rows of="output.coils" />
      </Disclosure>
      <Caution>
        At full power there are tens of volts at radio frequency on these parts, and with the
        antenna off or mismatched far more: they burn without a spark. Switch off before touching a
        coil to feel whether it is warm.
      </Caution>
    </Section>
  );
}
