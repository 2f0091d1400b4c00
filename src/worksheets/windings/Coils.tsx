import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { AirCoils } from './AirCoils.tsx';
import { CoilPlan } from './CoilPlan.tsx';
import { Metered } from './Metered.tsx';

/** Tuned coils: what to wind, how to trim it, whether it is good enough. */
export function Coils() {
  const onAir = useValue<string>('cores.coilCore') === 'air';
  return (
    <>
      <Section
        title="Coils to wind"
        margin={
          <>
            <Note title="What a turn is">
              <p>
                A pass of the wire through the hole is one turn: a wire pushed straight through is
                already one. Count inside the hole; the figure in the middle is what you should
                find.
              </p>
            </Note>
            <Note title="The pictures">
              <p>
                Cores are seen from above and drawn to scale with their wire. Whole lines lie on
                top, broken ones pass beneath.
              </p>
            </Note>
            <Note title="The turn you don’t see">
              <p>
                On its way round the ring the wire makes one large turn about the middle, too. Both
                ends leave at one place, and neighbours stand upright or apart, so that it couples
                with nothing.
              </p>
            </Note>
            <Note title="Left hand, right hand">
              <p>
                The inductance is the same. But on a board with fixed holes a coil wound the other
                way comes out half a turn off at each end, and strains its wire. Wind as drawn.
              </p>
            </Note>
          </>
        }
      >
        <Fields>
          <Entry of="cores.coilCore" form="list" />
          <Entry of="cores.wire" form="list" />
          <Entry of="cores.tail" />
        </Fields>
        <CoilPlan />
      </Section>
      {onAir ? (
        <AirCoils />
      ) : (
        <>
          <Metered />
          <Enough />
          <Schedule />
          <AirCoils />
        </>
      )}
    </>
  );
}

/** Q, self-resonance and flux against what is wanted of them. */
function Enough() {
  return (
    <Section
      title="Are they good enough?"
      margin={
        <Note title="Q and heat">
          <p>
            Twice the Q is half the heat in the coil. If the figure lies under the one that Output
            reckons with, take a larger core and thicker wire, or enter the true Q there.
          </p>
        </Note>
      }
    >
      <Rows
        of="windings.coils"
        caption="At the operating frequency"
        columns={['label', 'q', 'resonance', 'flux', 'fluxLimit', 'outcome']}
      />
      <Disclosure summary="Everything about each coil">
        <Rows
          of="windings.coils"
          caption="Core and turns"
          columns={['label', 'core', 'place', 'al', 'turnsExact', 'turns', 'off', 'share']}
        />
        <Rows
          of="windings.coils"
          caption="Wire and fit"
          columns={['label', 'bare', 'overall', 'thickest', 'coverage', 'fits', 'length']}
        />
        <Rows
          of="windings.coils"
          caption="Losses and strays"
          columns={['label', 'wire', 'resistanceDc', 'resistance', 'selfCapacitance']}
        />
      </Disclosure>
    </Section>
  );
}

/** The whole of it in a table: to be handed out, with room for what the meter says. */
function Schedule() {
  return (
    <Section
      title="Winding schedule"
      margin={
        <Note title="For the class">
          <p>
            Print this sheet: each builder gets the pictures, this table, and a blank where the
            meter’s reading goes.
          </p>
        </Note>
      }
    >
      <Rows
        of="windings.coils"
        caption="One line for each coil"
        narrow="scroll"
        columns={['label', 'core', 'turns', 'wire', 'length', 'l', 'lLow', 'lHigh', 'own']}
      />
      <Figures>
        <Result of="windings.wireTotal" />
      </Figures>
    </Section>
  );
}
