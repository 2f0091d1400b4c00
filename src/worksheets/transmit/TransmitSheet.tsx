import { Caution } from '../../design/Caution.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Leftovers } from './Leftovers.tsx';
import { Levels } from './Levels.tsx';

/** From the microphone to the final, in the order of the signal. */
export function TransmitSheet() {
  return (
    <SheetFrame
      stage="transmit"
      lead={
        <>
          A voice of <Write of="transmit.micLevel" />, amplified by{' '}
          <Read of="transmit.micGain" or="a gain still to be worked out" /> before the modulator,
          makes <Write of="plan.pep" /> at the antenna; as built the amplifier has{' '}
          <Read of="transmit.volumeDown" or="an unknown gain" /> to spare. The carrier is left{' '}
          <Read of="transmit.carrierSuppression" or="unknown" /> below, as{' '}
          <Read of="transmit.carrierPower" or="a power still unknown" />.
        </>
      }
      main={<Result of="transmit.micGain" size="main" />}
    >
      <Levels />
      <Leftovers />
      <Section
        margin={
          <Note>
            <p>Build one stage, test it, and let it feed the next.</p>
          </Note>
        }
      >
        <Caution>
          First into a dummy load that bears the power, from a supply with its current limit set a
          little above the figure here. The final’s case is hot enough to burn a finger long before
          the transistor suffers, and radio-frequency volts at its collector burn too: switch off
          before you touch. On the air only with a licence.
        </Caution>
      </Section>
    </SheetFrame>
  );
}
