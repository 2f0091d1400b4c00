import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { LevelPicture } from './LevelPicture.tsx';

/** The level plan both ways: gain needed, what flattens first, and every place for a probe. */
export function Levels() {
  return (
    <>
      <Section
        margin={
          <Note title="What should flatten first">
            <p>
              The final: it is designed to use its whole supply. Everything before it is cheaper to
              make strong, so a decibel or more in hand there costs little.
            </p>
          </Note>
        }
      >
        <LevelPicture />
        <Fields>
          <Entry of="transmit.micLevel" />
          <Entry of="transmit.micFitted" />
        </Fields>
        <Figures>
          <Result of="transmit.over" />
          <Result of="transmit.first" />
          <Result of="transmit.reserve" />
          <Result of="transmit.netGain" />
        </Figures>
      </Section>
      <Section
        title="Back from the watts, and forward from the voice"
        margin={
          <>
            <Note title="Two ways through one chain">
              <p>
                Backward: what each place must carry for full power. Forward: what arrives there
                with the gains as built and the volume full up. Where the two differ, the volume
                control is turned down by as much.
              </p>
            </Note>
            <Note title="How far up">
              <p>
                Turn the volume up until more speech makes no more watts, then back a little. Every
                decibel beyond goes into splatter.
              </p>
            </Note>
          </>
        }
      >
        <Figures>
          <Result of="transmit.volumeDown" />
          <Result of="transmit.builtPower" />
          <Result of="transmit.builtFirst" />
          <Result of="transmit.builtFirstAt" />
        </Figures>
        <Rows
          of="transmit.chain"
          caption="Wanted for full power, and as built"
          narrow="scroll"
          columns={['point', 'level', 'vpp', 'forward', 'forwardVpp', 'clip', 'headroom']}
        />
      </Section>
      <Section
        title="With a probe in hand"
        margin={
          <Note title="Across what">
            <p>
              One steady tone at full power. A ten-times probe loads the small stages least; at 50 Ω
              it must sit across the resistance named here, or the volts are others.
            </p>
          </Note>
        }
      >
        <Rows
          of="transmit.chain"
          caption="Where to hold a probe"
          columns={['point', 'vpp', 'load', 'level', 'headroom', 'limit']}
        />
        <Disclosure summary="Gains, sources and rms volts of every point">
          <Rows
            of="transmit.chain"
            caption="Gains and sources"
            columns={['point', 'vrms', 'source', 'gain', 'toAntenna']}
          />
        </Disclosure>
      </Section>
    </>
  );
}
