import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';

/** The two small amplifiers round the filter, the driver, and the transformers between. */
export function Amplifiers() {
  return (
    <>
      <Section
        title="The two amplifiers beside the filter"
        margin={
          <Note title="They are the filter’s ends">
            <p>
              A crystal filter keeps its shape only between the resistances it was designed for. The
              amplifiers’ own impedances, through their transformers, are those resistances.
            </p>
          </Note>
        }
      >
        <Entry of="transmit.amplifierDevice" form="list" />
        <Fields>
          <Entry of="transmit.amplifierCurrent" />
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
          <Result of="transmit.amplifierOutput" />
          <Result of="transmit.amplifierNoise" />
        </Figures>
      </Section>
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
          <Entry of="transmit.driverCurrent" />
          <Entry of="transmit.driverEmitter" />
          <Entry of="transmit.driverFeedback" />
          <Entry of="transmit.driverLoad" />
        </Fields>
        <Figures>
          <Result of="transmit.driverGain" />
          <Result of="transmit.driverClip" />
          <Result of="transmit.driverInput" />
        </Figures>
        <Rows of="transmit.couplings" />
      </Section>
    </>
  );
}
