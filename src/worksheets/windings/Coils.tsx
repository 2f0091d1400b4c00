import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { CoilPlan } from './CoilPlan.tsx';

/** Tuned coils: what to wind, how to trim it, whether it is good enough. */
export function Coils() {
  return (
    <>
      <Section
        title="Coils to wind"
        margin={
          <>
            <Note title="What a turn is">
              <p>
                A pass of the wire through the hole is one turn: a wire pushed straight through is
                already one. Count inside the hole.
              </p>
            </Note>
            <Note title="The pictures">
              <p>
                Cores are seen from above and drawn to scale with their wire. Whole lines lie on
                top, broken ones pass beneath.
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
        <Figures>
          <Result of="windings.wireTotal" />
        </Figures>
      </Section>
      <Section
        title="Measure, then spread or squeeze"
        margin={
          <Note title="More than a turn in it">
            <p>
              Ten turns pushed together have measured two thirds more than the same ten spread out.
              Spread them to lose inductance, squeeze to gain; take a turn off only if that is not
              enough.
            </p>
          </Note>
        }
      >
        <Rows
          of="windings.coils"
          caption="What the meter should show"
          columns={['label', 'l', 'lBelow', 'lAt', 'lAbove', 'off']}
        />
        <Rows
          of="windings.coils"
          caption="What to do then"
          columns={['label', 'own', 'lLow', 'lHigh', 'lBunched', 'advice']}
        />
        <Pasted of="output.measured" measured lines={4} example="L1 1.51 µH" />
        <Fields>
          <Entry of="windings.testCapacitor" />
        </Fields>
      </Section>
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
            columns={['label', 'core', 'place', 'al', 'turnsExact', 'turns', 'share', 'dip', 'length']}
          />
          <Rows
            of="windings.coils"
            caption="Wire and fit"
            columns={['label', 'bare', 'overall', 'thickest', 'coverage', 'fits']}
          />
          <Rows
            of="windings.coils"
            caption="Losses and strays"
            columns={['label', 'wire', 'resistanceDc', 'resistance', 'selfCapacitance']}
          />
        </Disclosure>
      </Section>
    </>
  );
}
