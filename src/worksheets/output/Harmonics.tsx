import { Caution } from '../../design/Caution.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { Outcome } from '../../engine/fields/kinds.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { HarmonicsPicture } from './HarmonicsPicture.tsx';

/** The verdict first: every harmonic against the rule. */
export function Harmonics() {
  const verdict = useValue<Outcome>('output.verdict');
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
        <Figures>
          <Result
            of="output.worstMargin"
            size="main"
            verdict={verdict === null ? undefined : { of: verdict }}
          />
          <Result of="output.worstOrder" />
          <Result of="output.verdict" />
        </Figures>
        <Fields>
          <Entry of="output.marginWanted" />
        </Fields>
      </Section>
      <Section>
        <HarmonicsPicture />
        <Say of="output.rule" />
        <Rows
          of="output.harmonics"
          caption="Each harmonic"
          columns={['order', 'frequency', 'level', 'limit', 'margin', 'outcome']}
        />
        <Rows
          of="output.harmonics"
          caption="How each comes about"
          columns={['order', 'current', 'transimpedance']}
        />
        <Caution>
          A planning figure. Rules differ by country and licence and change: read the text in force,
          measure the finished transmitter into a dummy load, and do not go on the air with a rig
          that fails. The operator answers for the station.
        </Caution>
      </Section>
    </>
  );
}
