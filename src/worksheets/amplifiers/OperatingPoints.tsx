import { useState } from 'react';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Rows } from '../bound/Rows.tsx';

/** Direct voltages to measure, and behind them the models and the node voltages. */
export function OperatingPoints() {
  const [open, setOpen] = useState(false);
  return (
    <Section
      title="Operating points"
      margin={
        <Note title="Measure these first">
          <p>
            A meter at base, emitter and collector tells more than a signal does. An emitter voltage
            between the cold row and the hot one is right; outside, look for a wrong resistor.
          </p>
        </Note>
      }
    >
      <Rows
        of="transmit.biases"
        columns={['stage', 'condition', 'vb', 've', 'vc', 'ic', 'vbe', 'gain', 'temperature']}
        caption="To ground, without signal"
        narrow="scroll"
      />
      <Disclosure
        summary="The transistors’ models, and every node voltage"
        open={open}
        onToggle={setOpen}
      >
        {open && (
          <>
            <Rows of="transmit.models" narrow="scroll" />
            <Rows of="transmit.nodes" narrow="scroll" />
          </>
        )}
      </Disclosure>
    </Section>
  );
}
