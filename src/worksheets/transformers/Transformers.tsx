import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Rows } from '../bound/Rows.tsx';
import { TransformerPlan } from './TransformerPlan.tsx';

/** Broadband windings on ferrite: what to wind, and how little they take. */
export function Transformers() {
  return (
    <>
      <Section
        title="Transformers and chokes to wind"
        margin={
          <>
            <Note title="Which end is which?">
              <p>
                Mark the start of each winding before you twist: half of the trouble with small
                transformers is one winding turned round.
              </p>
            </Note>
            <Note title="Copper and ink">
              <p>
                The first winding is drawn and numbered in copper, the second in ink, with its turns
                in the gaps of the first so that both can be counted.
              </p>
            </Note>
          </>
        }
      >
        <Fields>
          <Entry of="windings.transformerCore" form="list" />
          <Entry of="windings.modulatorCore" form="list" />
          <Entry of="windings.modulatorTurns" />
          <Entry of="windings.reactanceTimes" />
        </Fields>
        <TransformerPlan />
      </Section>
      <Section
        title="Do they load the circuit?"
        margin={
          <Note title="Four times is enough">
            <p>
              Four times the circuit’s impedance costs 0.07 dB by itself; what ferrite turns into
              heat comes on top. More turns buy little but wire and stray capacitance.
            </p>
          </Note>
        }
      >
        <Rows
          of="windings.transformers"
          caption="At the operating frequency"
          columns={['label', 'turns', 'secondTurns', 'impedance', 'times', 'loss', 'outcome']}
        />
        <Disclosure summary="Everything about each transformer">
          <Rows
            of="windings.transformers"
            caption="Core and turns"
            columns={['label', 'core', 'al', 'permeability', 'turnsExact', 'turnsFlux']}
          />
          <Rows
            of="windings.transformers"
            caption="Impedances, wire and flux"
            columns={[
              'label',
              'first',
              'second',
              'inductance',
              'wire',
              'length',
              'secondLength',
              'flux',
              'fluxLimit',
            ]}
          />
        </Disclosure>
      </Section>
    </>
  );
}
