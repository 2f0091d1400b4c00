import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Rows } from '../bound/Rows.tsx';
import { AirPicture } from './AirPicture.tsx';

/** The same coils without a core. */
export function AirCoils() {
  return (
    <Section
      title="Without a core"
      margin={
        <>
          <Note title="Air costs room">
            <p>
              No core to buy, nothing that saturates or drifts; but the field goes out into the box.
              Two diameters of distance, and neighbours at right angles.
            </p>
          </Note>
          <Note title="Two formulas">
            <p>
              Lorenz is exact for a sheet of current, Wheeler’s rule fits on a card. Stretch the
              coil to lose inductance, squeeze to gain.
            </p>
          </Note>
        </>
      }
    >
      <Fields>
        <Entry of="cores.former" />
        <Entry of="cores.airWire" />
        <Entry of="cores.airPitch" />
      </Fields>
      <AirPicture />
      <Rows
        of="windings.airCoils"
        caption="As air-core coils"
        columns={['label', 'l', 'turns', 'length', 'wire', 'q']}
      />
      <Disclosure summary="Everything about each of them">
        <Rows
          of="windings.airCoils"
          caption="Formulas, losses and strays"
          columns={['label', 'lorenz', 'wheeler', 'resistance', 'selfCapacitance', 'resonance']}
        />
        <Rows of="windings.airCoils" caption="To wind" columns={['label', 'build']} />
      </Disclosure>
    </Section>
  );
}
