import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';

/** What is left of carrier and other sideband at the antenna, and on the way there. */
export function Leftovers() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <Section
      title="What is left of carrier and other sideband"
      margin={
        <>
          <Note title="Two share the work">
            <p>
              The modulator’s null takes out the carrier by balance, the filter’s skirt takes out
              the rest. The other sideband is held back by the filter alone, least at low tones.
            </p>
          </Note>
          <Note title="People say">
            <p>
              “More microphone gain drowns the carrier.” It does, by as many decibels as the final
              still has to give: beyond that only the splatter grows.
            </p>
          </Note>
        </>
      }
    >
      <Figures>
        <Result of="transmit.carrierSuppression" />
        <Result of="transmit.carrierPower" />
        <Result of="transmit.carrierVpp" />
        <Result of="transmit.oppositeWorst" />
      </Figures>
      <Rows
        of="transmit.chain"
        caption="Carried along, with one tone at full power"
        narrow="scroll"
        columns={['point', 'level', 'carrier', 'opposite', 'oppositeWorst']}
      />
      {converts && <Rows of="transmit.unwanted" />}
    </Section>
  );
}
