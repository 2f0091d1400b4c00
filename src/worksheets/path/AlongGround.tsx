import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** Along the ground: what the ground takes. */
export function AlongGround() {
  return (
    <Section
      title="Along the ground"
      margin={
        <Note title="Sea and dry land">
          <p>
            Over sea water the wave runs on almost as over metal; over dry land ten megahertz lose
            forty decibels in twenty kilometres. Verticals at both ends: a level wire sends nothing
            along the ground.
          </p>
        </Note>
      }
    >
      <Entry of="antenna.ground" form="list" />
      <Figures>
        <Result of="path.surface" />
      </Figures>
    </Section>
  );
}
