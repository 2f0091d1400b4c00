import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { HarmonicsPicture } from './HarmonicsPicture.tsx';

/** The verdict first: every harmonic against the rule. */
export function Harmonics() {
  return (
    <>
      <Section
        title="Are the harmonics gone?"
        margin={
          <Note title="Where they come from">
            <p>
              The final conducts for part of each cycle; that pulse is a sum of harmonics. Close to
              saturation a real second harmonic swings by 20 dB with bias and drive, so measure it.
            </p>
          </Note>
        }
      >
        <HarmonicsPicture />
        <Figures>
          <Result of="output.verdict" />
          <Result of="output.worstOrder" />
        </Figures>
        <Fields>
          <Entry of="output.marginWanted" />
        </Fields>
      </Section>
      <Section>
        <Say of="output.rule" />
        <Rows
          of="output.harmonics"
          caption="Each harmonic"
          narrow="scroll"
          columns={['order', 'frequency', 'level', 'limit', 'margin', 'outcome']}
        />
        <Disclosure summary="How each comes about">
          <Rows
            of="output.harmonics"
            caption="Current of each harmonic, and what the network makes of it"
            columns={['order', 'current', 'transimpedance']}
          />
        </Disclosure>
        <Caution>
          A planning figure. Rules differ by country and licence and change: read the text in force,
          measure the finished transmitter into a dummy load, and do not go on the air with a rig
          that fails. The operator answers for the station.
        </Caution>
      </Section>
    </>
  );
}
