import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { LoudnessPicture } from './LoudnessPicture.tsx';

/** From the detector to the ear: gain, loudness, and what chip and speaker can give. */
export function Audio() {
  return (
    <>
      <Section>
        <LoudnessPicture />
      </Section>
      <Section
        title="How loud it is"
        margin={
          <Note title="All the gain is behind the detector">
            <p>
              With so much audio gain, hum and a spoiled ground are heard before any station. Keep
              the detector and the preamplifier away from the speaker leads, and give the chip its
              own return to the supply.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="receive.preampGain" />
          <Entry of="receive.speaker" />
          <Entry of="receive.listening" />
        </Fields>
        <Entry of="receive.chipGain" form="row" />
        <Figures>
          <Result of="receive.audioGain" />
          <Result of="receive.gain" />
          <Result of="receive.speakerMost" />
          <Result of="receive.detectorVolts" />
        </Figures>
        <Rows
          of="receive.loudness"
          caption="Loudness from S1 to S9 + 40 dB, volume full up"
          columns={['report', 'level', 'speaker', 'needed', 'antennaVolts', 'detector']}
          narrow="scroll"
        />
        <Caution>
          No automatic gain control spares the ear: a strong station next door is a thousand times
          louder than the one just listened to. Start with the volume down, above all with
          headphones.
        </Caution>
        <Disclosure summary="The audio chip, its supply and its heat">
          <Fields>
            <Entry of="receive.chip" />
            <Entry of="receive.audioSupply" />
          </Fields>
          <Figures>
            <Result of="receive.audioVoltage" />
            <Result of="receive.chipHeat" />
          </Figures>
        </Disclosure>
      </Section>
    </>
  );
}
