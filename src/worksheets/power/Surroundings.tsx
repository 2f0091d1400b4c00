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
import { Say } from '../bound/Say.tsx';

/** What stands round the transistor: emitter resistor, bias, windings, and its model card. */
export function Surroundings() {
  const pair = useValue<string>('transmit.finalForm') === 'pushPull';
  return (
    <Section
      title="Does it stay calm as it warms?"
      margin={
        <Note title="Why an emitter resistor">
          <p>
            A warm transistor draws more, which warms it more. Half an ohm at each emitter, and a
            bias diode on the same heat sink, break the circle; side by side they also make several
            transistors share.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="power.ballast" />
        <Entry of="power.biasSource" />
        <Entry of="power.shunt" />
      </Fields>
      <Entry of="power.tracking" form="row" />
      <Say of="power.ballastAdvice" />
      <Figures>
        <Result of="power.steady" />
        <Result of="power.thermalLoop" />
        <Result of="power.runawayCurrent" none="never" />
        <Result of="power.ballastNeeded" />
        <Result of="power.ballastStanding" />
        <Result of="power.ballastCrest" />
        <Result of="power.standingEach" />
        <Result of="power.devices" />
        <Result of="power.heatPath" />
        <Result of="power.drift" />
      </Figures>
      <Disclosure summary="Windings and strays round it">
        <Fields>
          <Entry of="power.lead" />
          <Entry of="power.winding" />
          <Entry of="power.feed" />
          {pair && <Entry of="power.halves" />}
          <Entry of="power.stray" />
          <Entry of="power.driverLead" />
        </Fields>
        <Entry of="power.warmth" form="row" />
        <Figures>
          <Result of="power.feedUsed" />
          <Result of="power.driverUsed" />
        </Figures>
      </Disclosure>
      <Disclosure summary="The transistor’s model card, or your own">
        <Say of="power.cardSource" />
        <Pasted of="power.card" files=".txt,.lib,.mod,text/plain" />
        <Rows of="power.cardRows" caption="What the card says" />
      </Disclosure>
    </Section>
  );
}
