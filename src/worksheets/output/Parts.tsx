import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';

const fitting = ['label', 'part', 'exactC', 'fittedC', 'exactL', 'l'];

/** What to buy and wind, and what it has to bear. */
export function Parts() {
  const pairs = useValue<string>('output.fitted')?.endsWith('pair') === true;
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
              Filters reckoned with a Q of 200 have come out with 50. Left blank, Q is that of the
              smallest toroid that suffices; <a href="#windings">Windings</a> has turns and wire.
            </p>
          </Note>
        </>
      }
    >
      <Entry of="output.fitted" form="list" />
      <Entry of="output.coilsFitted" form="row" />
      <Rows
        of="output.elements"
        caption="From exact to fitted"
        narrow="scroll"
        columns={pairs ? [...fitting, 'made'] : fitting}
      />
      <Rows
        of="output.elements"
        caption="What each part bears at full power"
        narrow="scroll"
        columns={['label', 'volts', 'rating', 'amps', 'heat', 'warmth']}
      />
      <Figures>
        <Result of="output.lost" />
        <Result of="output.loss" />
      </Figures>
      <Fields>
        <Entry of="output.coilQ" />
        <Entry of="output.capacitorQ" />
        <Entry of="output.selfCapacitance" />
      </Fields>
      <Rows
        of="output.asWound"
        narrow="scroll"
        columns={['label', 'core', 'turns', 'turnsOnAir', 'wire', 'lWound', 'q', 'own', 'notch']}
      />
      <Disclosure summary="It is built: put in what the meter says">
        <Pasted of="output.measured" measured lines={4} example="L1 1.51 µH" />
      </Disclosure>
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
