import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** Antennas and feed lines at both ends, and what is lost between them. */
export function Losses() {
  const route = useValue<string>('path.route');
  const sky = route === 'skyWave';
  const known = useValue<string>('antenna.kind') === 'known';
  const same = useValue<string>('antenna.far') === 'same';
  return (
    <Section
      title="Antennas, and the loss between them"
      margin={
        <Note title="Decibels are cheap at the antenna">
          <p>
            Ten times the power is ten decibels and a new final. From a short wire to a full dipole
            is as much, and the other station hears it as well as you do.
          </p>
        </Note>
      }
    >
      <Fields title="Here">
        {known && <Entry of="path.gain" />}
        <Entry of="path.feedLoss" />
      </Fields>
      <Fields title="There">
        {!same && <Entry of="path.farGain" />}
        <Entry of="path.farFeedLoss" />
      </Fields>
      <Figures>
        <Result of="path.loss" />
        <Result of="path.gainHere" />
        <Result of="path.gainThere" />
        <Result of="path.eirp" />
        <Result of="path.spreading" />
        <Result of="path.length" />
        {sky && (
          <>
            <Result of="path.absorption" />
            <Result of="path.groundLoss" />
            <Result of="path.index" />
          </>
        )}
      </Figures>
    </Section>
  );
}
