import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Rows } from '../bound/Rows.tsx';
import { MixPicture } from './MixPicture.tsx';

/** One transformer in each mix: what people say against the sum. */
export function Mixes() {
  return (
    <Section
      title="Which mix? The sum, not the saying"
      margin={
        <Note title="People say">
          <p>
            “Mix 43 is no good at low HF.” “Mix 43 does everything.” The sum: it takes more than mix
            61 at the same turns. Between small stages some tenths of a decibel are no matter; in a
            final they are heat. Where mix 61 would take too many turns, mix 43 it is.
          </p>
        </Note>
      }
    >
      <MixPicture />
      <Rows
        of="windings.transformerMixes"
        caption="The same transformer, the same size of core, the same rule"
        columns={['core', 'turns', 'secondTurns', 'loss', 'taken', 'rise']}
      />
    </Section>
  );
}
