import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { StabilityPicture } from './StabilityPicture.tsx';
import { Third } from './Third.tsx';

/** The two small amplifiers round the filter, the driver, and the transformers between. */
export function Amplifiers() {
  return (
    <>
      <Section
        title="The two amplifiers beside the filter"
        margin={
          <>
            <Note title="They are the filter’s ends">
              <p>
                A crystal filter keeps its shape only between the resistances it was designed for.
                The amplifiers’ own impedances, through their transformers, are those resistances.
              </p>
            </Note>
            <Note title="Two resistors, three figures">
              <p>
                Feedback and emitter resistor set gain, input and output together: their product is
                about the square of the impedance. What the transistor adds grows with frequency.
              </p>
            </Note>
            <Note title="Where K is below 1">
              <p>
                Some source or load would set the stage oscillating at that frequency; the ones that
                are there need not. What helps: a smaller feedback resistor, a larger one in the
                emitter, some ohms in series with the base, a load that stays a resistance outside
                the band too, short leads.
              </p>
            </Note>
          </>
        }
      >
        <Entry of="transmit.amplifierDevice" form="list" />
        <Fields>
          <Entry of="transmit.amplifierEmitter" />
          <Entry of="transmit.amplifierFeedback" />
          <Entry of="transmit.amplifierLoad" />
          <Entry of="transmit.filterDrive" />
        </Fields>
        <Figures>
          <Result of="transmit.amplifierGain" />
          <Result of="transmit.amplifierClip" />
          <Result of="transmit.filterSource" />
          <Result of="transmit.amplifierInput" />
          <Result of="transmit.amplifierInputC" />
          <Result of="transmit.amplifierOutput" />
          <Result of="transmit.amplifierOutputC" />
          <Result of="transmit.secondOutput" />
          <Result of="transmit.amplifierNoise" />
          <Result of="transmit.amplifierIntercept" />
          <Result of="transmit.amplifierStanding" />
          <Result of="transmit.amplifierK" />
          <Result of="transmit.amplifierKAt" />
        </Figures>
        <StabilityPicture />
        <Disclosure summary="Where their noise comes from">
          <Rows of="transmit.amplifierNoises" />
        </Disclosure>
        <Disclosure summary="Their other resistors and capacitors, and the half that sleeps">
          <Entry of="transmit.amplifierBias" form="list" />
          <Fields>
            <Entry of="transmit.amplifierUpper" />
            <Entry of="transmit.amplifierLower" />
            <Entry of="transmit.amplifierBridged" />
            <Entry of="transmit.amplifierBridge" />
            <Entry of="transmit.amplifierFeed" />
            <Entry of="transmit.amplifierChoke" />
            <Entry of="transmit.amplifierCoupling" />
            <Entry of="transmit.amplifierCurrent" />
          </Fields>
          <Entry of="transmit.amplifierAsleep" form="list" />
        </Disclosure>
      </Section>
      <Third />
      <Section
        title="The driver"
        margin={
          <Note title="Class A, always warm">
            <p>
              Its current stands whether you speak or not, and sets the power that the final can be
              given. If the level plan lacks headroom here, raise it.
            </p>
          </Note>
        }
      >
        <Entry of="transmit.driverDevice" form="list" />
        <Fields>
          <Entry of="transmit.driverEmitter" />
          <Entry of="transmit.driverFeedback" />
          <Entry of="transmit.driverLoad" />
          <Entry of="transmit.driverBridged" />
        </Fields>
        <Figures>
          <Result of="transmit.driverGain" />
          <Result of="transmit.driverClip" />
          <Result of="transmit.driverStanding" />
          <Result of="transmit.driverInput" />
          <Result of="transmit.driverInputC" />
          <Result of="transmit.driverSource" />
          <Result of="transmit.driverOutput" />
          <Result of="transmit.driverK" />
          <Result of="transmit.driverKAt" />
        </Figures>
        <Disclosure summary="Its other parts, and the transformer">
          <Entry of="transmit.driverBias" form="list" />
          <Fields>
            <Entry of="transmit.driverUpper" />
            <Entry of="transmit.driverLower" />
            <Entry of="transmit.driverBridge" />
            <Entry of="transmit.driverCoupling" />
            <Entry of="transmit.driverWinding" />
            <Entry of="transmit.driverLeakage" />
            <Entry of="transmit.driverCore" />
            <Entry of="transmit.driverCurrent" />
          </Fields>
        </Disclosure>
        <Rows of="transmit.couplings" />
      </Section>
    </>
  );
}
