import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** The final: its form, its bias and its load, and how the load is made of the antenna. */
export function Final() {
  const byAngle = useValue<string>('transmit.biasBy') === 'angle';
  const form = useValue<string>('transmit.finalForm');
  return (
    <Section
      title="The final"
      margin={
        <Note title="A load line, no match">
          <p>
            The load is chosen so that the collector swings over the whole supply when the wanted
            power flows. Into 50 Ω straight on, the same transistor gives far less.
          </p>
        </Note>
      }
    >
      <Entry of="transmit.finalDevice" form="list" />
      <Entry of="transmit.finalForm" form="row" />
      {form !== 'single' && (
        <Fields>
          <Entry of="transmit.finalDevices" />
          {form === 'pushPull' && <Entry of="transmit.evenBalance" />}
        </Fields>
      )}
      <Fields>
        <Entry of="transmit.finalGain" />
        <Entry of="transmit.saturation" />
        <Entry of="transmit.network" />
        <Entry of="transmit.finalInput" />
      </Fields>
      <Entry of="transmit.biasBy" form="row" />
      <Fields>{byAngle ? <Entry of="transmit.angle" /> : <Entry of="transmit.standing" />}</Fields>
      <Figures>
        <Result of="transmit.collectorLoad" />
        <Result of="transmit.collectorPower" />
        <Result of="transmit.operating" />
        <Result of="transmit.conductionAngle" />
      </Figures>
      <Say of="transmit.standingAdvice" />
    </Section>
  );
}
