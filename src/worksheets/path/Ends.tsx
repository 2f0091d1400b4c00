import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** Both stations: antenna, line, place and power. */
export function Ends() {
  const known = useValue<string>('antenna.kind') === 'known';
  const same = useValue<string>('antenna.far') === 'same';
  const typed = useValue<string>('feed.line') === 'known';
  const farTyped = useValue<string>('feed.farLine') === 'known';
  return (
    <>
      <Section
        title="This station"
        margin={
          <Note title="Decibels are cheap at the antenna">
            <p>
              Ten times the power is ten decibels and a new final. From a short wire to a full
              dipole is as much, for the price of the wire.
            </p>
          </Note>
        }
      >
        <Entry of="antenna.kind" form="list" />
        <Entry of="feed.line" form="list" />
        <Entry of="receive.place" form="list" />
        <Fields>
          {known && <Entry of="path.gain" />}
          {typed ? <Entry of="feed.knownLoss" /> : <Entry of="feed.length" />}
          <Entry of="receive.atmospheric" />
        </Fields>
        <Figures>
          <Result of="path.eirp" />
          <Result of="path.atAntenna" />
          <Result of="path.gainHere" />
          <Result of="path.lineHere" />
        </Figures>
      </Section>
      <Section
        title="The other station"
        margin={
          <Note title="Two places, two noises">
            <p>
              The noise there decides how well this station is heard, the noise here how well they
              are. A quiet field hears a street that does not hear it.
            </p>
          </Note>
        }
      >
        <Entry of="antenna.far" form="row" />
        <Entry of="feed.farLine" form="list" />
        <Entry of="path.farPlace" form="list" />
        <Fields>
          {!same && <Entry of="path.farGain" />}
          {farTyped ? <Entry of="feed.farKnownLoss" /> : <Entry of="feed.farLength" />}
          <Entry of="path.farPower" />
          <Entry of="path.farAtmospheric" />
        </Fields>
        <Figures>
          <Result of="path.farExternal" />
          <Result of="path.farBand" />
          <Result of="path.gainThere" />
          <Result of="path.lineThere" />
        </Figures>
      </Section>
    </>
  );
}
