import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { NetworkPicture } from './NetworkPicture.tsx';
import { ResponsePicture } from './ResponsePicture.tsx';

/** How the load is made and the harmonics are held back. */
export function Network() {
  const match = useValue<string>('output.match');
  const lowpass = useValue<string>('output.lowpass');
  const prototype = lowpass === 'chebyshev' || lowpass === 'butterworth';
  return (
    <>
      <Section
        title="The network"
        margin={
          <Note title="Two jobs">
            <p>
              The match makes of the antenna the load that the final wants; the filter keeps its
              harmonics from the antenna. A pi match does a little of both.
            </p>
          </Note>
        }
      >
        <Entry of="output.match" form="row" />
        <Entry of="output.lowpass" form="list" />
        <Fields>
          {match === 'pi' && <Entry of="output.loadedQ" />}
          {prototype && <Entry of="output.order" />}
          {prototype && <Entry of="output.cutoffRatio" />}
          {lowpass === 'chebyshev' && <Entry of="output.ripple" />}
        </Fields>
        <NetworkPicture />
        <Figures>
          {prototype && <Result of="output.cutoff" />}
          {match === 'transformer' && (
            <>
              <Result of="output.transformerRatio" />
              <Result of="output.transformerPrimary" />
              <Result of="output.transformerSecondary" />
            </>
          )}
        </Figures>
      </Section>
      <Section>
        <ResponsePicture />
      </Section>
    </>
  );
}
