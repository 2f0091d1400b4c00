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
        title="Transformers to wind"
        margin={
          <>
            <Note title="Dots">
              <p>
                A dot marks where a wire begins. Every wire here goes down through the hole at each
                turn, so all dotted ends rise together. Half of the trouble with small transformers
                is one winding turned round.
              </p>
            </Note>
            <Note title="Three wires, three patterns">
              <p>
                A is drawn plain and numbered, B banded, C hollow. Take wire of different colours,
                or find the ends with a meter and label them; letters with a stroke are finishes.
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
          columns={['label', 'impedance', 'times', 'loss', 'ratioOff', 'upper', 'outcome']}
        />
        <Disclosure summary="Everything about each transformer">
          <Rows
            of="windings.transformers"
            caption="Core and turns"
            columns={['label', 'core', 'al', 'stores', 'loses', 'turnsExact', 'turnsFlux']}
          />
          <Rows
            of="windings.transformers"
            caption="Impedances"
            columns={['label', 'first', 'second', 'turns', 'secondTurns', 'inductance']}
          />
          <Rows
            of="windings.transformers"
            caption="Loss and heat"
            columns={['label', 'shuntR', 'shuntX', 'power', 'taken', 'takenSpeech', 'rise']}
          />
          <Rows
            of="windings.transformers"
            caption="Wire"
            columns={['label', 'form', 'wire', 'bare', 'length', 'secondLength']}
          />
          <Rows
            of="windings.transformers"
            caption="How high it goes, and flux"
            columns={['label', 'leakage', 'angle', 'upperBy', 'flux', 'fluxLimit']}
          />
          <Rows
            of="windings.transformerEdges"
            columns={['label', 'edge', 'frequency', 'shuntR', 'shuntX', 'loss']}
          />
        </Disclosure>
      </Section>
    </>
  );
}
