import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { HEARING } from '../../engine/data/hearing.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { LoudnessPicture } from './LoudnessPicture.tsx';
import { SoundPicture } from './SoundPicture.tsx';

/** From the detector to the ear: gain, loudness, hum, and what chip and speaker can give. */
export function LoudnessLeaf() {
  return (
    <SheetFrame
      stage="loudness"
      main={<Loudest />}
      lead={
        <>
          With the volume where <Read of="receive.setFor" /> makes{' '}
          <Read of="receive.comfort" or="a comfortable sound" />, the noise between the words has{' '}
          <Read of="receive.noiseSound" or="some level" />, and a station forty decibels over S9
          comes up with <Read of="receive.loudest" or="more" />.
        </>
      }
    >
      <Ear />
      <Gain />
      <Hum />
    </SheetFrame>
  );
}

function Loudest() {
  const loudest = useValue<number>('receive.loudest');
  const verdict =
    loudest === null
      ? undefined
      : loudest > HEARING.quarterHour
        ? ({ of: 'fails', says: 'harms the ear' } as const)
        : loudest > HEARING.eightHours
          ? ({ of: 'close', says: 'not for hours on end' } as const)
          : ({ of: 'holds', says: 'no harm to the ear' } as const);
  return <Result of="receive.loudest" size="main" verdict={verdict} />;
}

function Ear() {
  const phones = useValue<string>('receive.ears') === 'phones';
  return (
    <Section
      title="At the ear"
      margin={
        <Note title="Sounds to compare with">
          <p>
            A quiet room has some 30 dB, talk across a table 60, a street 75. Eighty-five for eight
            hours a day is where hearing begins to suffer; each three decibels more halve the time
            (NIOSH 98-126; all from memory).
          </p>
        </Note>
      }
    >
      <SoundPicture />
      <Entry of="receive.ears" form="row" />
      <Fields>
        {phones ? (
          <Entry of="receive.phonesSensitivity" />
        ) : (
          <>
            <Entry of="receive.speakerSensitivity" />
            <Entry of="receive.speakerDistance" />
          </>
        )}
        <Entry of="receive.speaker" />
        <Entry of={phones ? 'receive.phonesListening' : 'receive.listening'} />
      </Fields>
      <Entry of="receive.setFor" form="row" />
      <Figures>
        <Result of="receive.comfort" />
        <Result of="receive.noiseSound" />
        <Result of="receive.setGain" />
      </Figures>
      <Caution>
        No automatic gain control spares the ear: a strong station next door may come in fifty
        decibels over the one just listened to. Start with the volume down, above all with
        headphones. A resistor, two diodes back to back and a second resistor before them hold the
        worst back; the diodes alone still leave more than 100 dB in headphones of 32 Ω.
      </Caution>
    </Section>
  );
}

function Gain() {
  return (
    <Section title="How far up the volume must be">
      <LoudnessPicture />
      <Fields>
        <Entry of="receive.preampGain" />
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
        caption="From S1 to S9+40 dB"
        columns={[
          'report',
          'level',
          'soundSet',
          'sound',
          'speaker',
          'needed',
          'antennaVolts',
          'detector',
        ]}
        narrow="scroll"
      />
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
  );
}

/** Pointers for what is heard although no antenna brings it. */
function Hum() {
  return (
    <Section
      title="Hum, and what the table shakes"
      margin={
        <Note title="Which it is">
          <p>
            Hum without the antenna and with the oscillator stopped comes in as audio: supply,
            ground, a coil near the transformer. Hum that is heard only on a station rides on the
            oscillator. Hum that goes when the antenna is taken off is your own oscillator’s
            carrier, come back from the mains wiring.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="receive.humAllowed" />
      </Figures>
      <ul className="helps">
        <li>
          With so much gain the speaker’s leads talk back into the detector. Keep detector and
          preamplifier away from them, and give the chip its own return to the supply.
        </li>
        <li>
          Motorboating is the chip feeding the preamplifier through the supply: 100 Ω and 100 µF in
          the preamplifier’s feed, and 100 µF and more at the chip.
        </li>
        <li>
          Tap each part with a pencil. Ceramic capacitors of the high-capacity kind in the audio
          path and loose coils in the oscillator ring: film capacitors and wax or glue quieten them.
        </li>
        <li>
          A whistle that changes as the volume turns is feedback through the air or the wires: less
          preamplifier gain, or the speaker in a box of its own.
        </li>
      </ul>
    </Section>
  );
}
