import { Disclosure } from '../../design/Disclosure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';

/** What is heard here of the other station, and who hears whom the better. */
export function BothWays() {
  return (
    <Section
      title="And back: what is heard here"
      margin={
        <Note title="The same way">
          <p>
            The path and both antennas serve both directions alike. Only powers, noises and lines
            make a difference.
          </p>
        </Note>
      }
    >
      <Say of="path.balanceWords" />
      <Figures>
        <Result of="path.heardReport" none="nothing arrives" />
        <Result of="path.heardSnr" />
        <Result of="path.heardSpeech" />
        <Result of="path.balance" />
        <Result of="path.heardReceived" />
        <Result of="path.heardNoise" />
      </Figures>
      <Disclosure summary="The way back, line by line">
        <Rows of="path.back" narrow="scroll" />
      </Disclosure>
    </Section>
  );
}
