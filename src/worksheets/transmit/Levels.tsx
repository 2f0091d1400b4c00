import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { LevelPicture } from './LevelPicture.tsx';

/** The level plan: gain needed, what flattens first, and every place for a probe. */
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
        margin={
          <Note title="With a probe in hand">
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
        <Disclosure summary="Gains, sources and limits of every point">
          <Rows
            of="transmit.chain"
            caption="Gains, sources and limits"
            columns={['point', 'vrms', 'source', 'gain', 'toAntenna', 'clip']}
          />
        </Disclosure>
      </Section>
    </>
  );
}
