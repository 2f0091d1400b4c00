import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Rows } from '../bound/Rows.tsx';

/** One transformer in each mix: what people say against the sum. */
export function Mixes() {
  return (
    <Section
      title="Which mix? The sum, not the saying"
      margin={
        <Note title="People say">
          <p>
            “mix 43 is no good at low HF”, others “nothing else is needed”. The sum says: it loses
            some tenths of a decibel more than mix 61, and takes half the turns. Between small
            stages nobody notices; in a final’s output the tenths are heat.
          </p>
        </Note>
      }
    >
      <Rows
        of="windings.transformerMixes"
        caption="The same transformer, the same size of core, the same rule"
        columns={['core', 'label', 'turns', 'secondTurns', 'loss', 'taken', 'rise']}
      />
    </Section>
  );
}
