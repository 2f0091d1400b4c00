import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** How the load that the final wants is made of the antenna, and what comes of it without. */
export function LoadMade() {
  return (
    <Section
      title="That load from this antenna"
      margin={
        <Note title="Two ways">
          <p>
            A transformer does it over the whole band in whole turns. An L-match does it at one
            frequency, in any ratio, and keeps some harmonics back by the way. Output works out the
            transformer or a pi; a pi with the least Q is this L.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="transmit.straightOn" />
        <Result of="transmit.ratioNeeded" />
        <Result of="transmit.matchQ" />
        <Result of="transmit.matchCoil" />
        <Result of="transmit.matchCapacitor" />
      </Figures>
      <Say of="transmit.ratioWords" />
    </Section>
  );
}
