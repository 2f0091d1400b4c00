import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** The microphone amplifier and the follower behind it. */
export function Speech() {
  return (
    <Section
      title="The microphone amplifier"
      margin={
        <Note title="One amplifies, one follows">
          <p>
            Collector resistor over emitter resistor is roughly the gain. The follower behind it
            lends it the current that the modulator takes.
          </p>
        </Note>
      }
    >
      <Entry of="transmit.micDevice" form="list" />
      <Fields>
        <Entry of="transmit.micSource" />
        <Entry of="transmit.micEmitter" />
        <Entry of="transmit.micFeed" />
        <Entry of="transmit.followerEmitter" />
      </Fields>
      <Figures>
        <Result of="transmit.micStageGain" />
        <Result of="transmit.micClip" />
        <Result of="transmit.followerClip" />
        <Result of="transmit.micLoad" />
        <Result of="transmit.followerOutput" />
        <Result of="transmit.micStanding" />
        <Result of="transmit.followerStanding" />
      </Figures>
      <Disclosure summary="The other resistors and capacitors, and between the two">
        <Entry of="transmit.micBias" form="list" />
        <Fields>
          <Entry of="transmit.micUpper" />
          <Entry of="transmit.micLower" />
          <Entry of="transmit.micBridged" />
          <Entry of="transmit.micBridge" />
          <Entry of="transmit.micCoupling" />
          <Entry of="transmit.followerUpper" />
          <Entry of="transmit.followerLower" />
          <Entry of="transmit.followerCoupling" />
          <Entry of="transmit.micInput" />
          <Entry of="transmit.micCurrent" />
        </Fields>
        <Figures>
          <Result of="transmit.followerInput" />
          <Result of="transmit.followerSource" />
        </Figures>
      </Disclosure>
    </Section>
  );
}
