import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** In line of sight: the horizon, and what the ray by way of the ground does. */
export function Sight() {
  const ground = useValue<string>('path.route') === 'twoRay';
  return (
    <Section
      title="The line of sight"
      margin={
        <Note title="Low antennas">
          <p>
            Near the ground the reflected ray arrives turned over and all but cancels the direct
            one. Twice the height of one antenna is then worth 6 dB.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="path.height" />
        <Entry of="path.farHeight" />
      </Fields>
      {ground && <Entry of="path.polarisation" form="row" />}
      <Figures>
        <Result of="path.horizon" />
        {ground && (
          <>
            <Result of="path.groundRay" />
            <Result of="path.grazing" />
            <Result of="path.mirrorSize" />
            <Result of="path.mirrorTurn" />
          </>
        )}
      </Figures>
    </Section>
  );
}
