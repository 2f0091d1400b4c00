import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Rows } from '../bound/Rows.tsx';

/** Chokes: wound on ferrite, or bought. */
export function Chokes() {
  return (
    <Section
      title="Chokes: wind them or buy them"
      margin={
        <>
          <Note title="Above its self-resonance">
            <p>
              A choke is a capacitor there. One of 100 µH that resonates at 6 MHz keeps little back
              on 14 MHz; one of 10 µH does better.
            </p>
          </Note>
          <Note title="Direct current">
            <p>
              It magnetises the core and takes some of its inductance as long as it flows. Mix 61
              hardly notices; mixes of high permeability do.
            </p>
          </Note>
        </>
      }
    >
      <Fields>
        <Entry of="windings.chokeFeed" />
      </Fields>
      <Disclosure summary="Chokes at hand">
        <Pasted of="windings.chokesAtHand" />
      </Disclosure>
      <Rows
        of="windings.chokes"
        caption="Either of the two does it"
        columns={['label', 'needed', 'direct', 'build', 'times', 'ready', 'readyTimes']}
      />
      <Disclosure summary="Everything about each choke">
        <Rows
          of="windings.chokes"
          caption="What it is for"
          columns={['label', 'does', 'resistance']}
        />
        <Rows
          of="windings.chokes"
          caption="Core and turns"
          columns={['label', 'core', 'al', 'stores', 'loses', 'turnsExact', 'turnsFlux', 'turns']}
        />
        <Rows
          of="windings.chokes"
          caption="Direct current and what it leaves"
          columns={['label', 'inductance', 'field', 'kept', 'impedance', 'wire', 'bare', 'length']}
        />
        <Rows
          of="windings.chokes"
          caption="Heat and flux"
          columns={['label', 'taken', 'rise', 'flux', 'fluxLimit', 'outcome']}
        />
        <Rows
          of="windings.chokes"
          caption="Ready-made"
          columns={['label', 'ready', 'readyL', 'readyResonance', 'readyMost']}
        />
      </Disclosure>
    </Section>
  );
}
