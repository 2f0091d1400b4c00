import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Result } from '../bound/Result.tsx';

/** What is left of carrier and other sideband at the antenna. */
export function Leftovers() {
  return (
    <Section
      title="What is left of carrier and other sideband"
      margin={
        <Note title="Two share the work">
          <p>
            The modulator’s null takes out the carrier by balance, the filter’s skirt takes out the
            rest. The other sideband is held back by the filter alone, least at low tones.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="transmit.carrierSuppression" />
        <Result of="transmit.carrierVpp" />
        <Result of="transmit.carrierPower" />
        <Result of="transmit.balance" />
        <Result of="transmit.oppositeWorst" />
      </Figures>
    </Section>
  );
}
