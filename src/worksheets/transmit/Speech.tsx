import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** Microphone amplifier and balanced modulator. */
export function Speech() {
  return (
    <Section
      title="Microphone and modulator"
      margin={
        <Note title="Carrier strong, audio weak">
          <p>
            The carrier switches the diodes, the audio rides along. Audio nearer than some 6 dB to
            the carrier lets the voice do the switching, and it splatters.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="transmit.carrierDrive" />
        <Entry of="transmit.conversionLoss" />
        <Entry of="transmit.pad" />
        <Entry of="transmit.null" />
      </Fields>
      <Figures>
        <Result of="transmit.audioVolts" />
        <Result of="transmit.audioLevel" />
      </Figures>
      <Disclosure summary="Impedances and the microphone amplifier’s current">
        <Fields>
          <Entry of="transmit.micInput" />
          <Entry of="transmit.micCurrent" />
          <Entry of="transmit.modulatorImpedance" />
        </Fields>
      </Disclosure>
    </Section>
  );
}
