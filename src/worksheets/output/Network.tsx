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
  const stopBy = useValue<string>('output.stopBy');
  const elliptic = lowpass === 'elliptic';
  const rippled = lowpass === 'chebyshev' || elliptic;
  const prototype = rippled || lowpass === 'butterworth';
  const plain = lowpass !== 'none' && !elliptic;
  return (
    <>
      <Section
        title="The network"
        margin={
          <>
            <Note title="Two jobs">
              <p>
                The match makes of the antenna the load that the final wants; the filter keeps its
                harmonics from the antenna. A pi match does a little of both.
              </p>
            </Note>
            {plain && (
              <Note title="A trap is no afterthought">
                <p>
                  A capacitor laid across a finished coil stops the harmonic and spoils the match:
                  the coil has grown at the operating frequency, too. Here it is made smaller by as
                  much.
                </p>
              </Note>
            )}
            {elliptic && (
              <Note title="Steep, and touchy">
                <p>
                  Every coil is a trap with a place of its own. Tune each one to its notch before it
                  goes in; the match then comes by itself.
                </p>
              </Note>
            )}
          </>
        }
      >
        <Entry of="output.match" form="row" />
        <Entry of="output.lowpass" form="list" />
        <Fields>
          {match === 'pi' && <Entry of="output.loadedQ" />}
          {prototype && <Entry of="output.order" />}
          {prototype && <Entry of="output.cutoffRatio" />}
          {rippled && <Entry of="output.ripple" />}
          {elliptic && stopBy === 'edge' && <Entry of="output.stopRatio" />}
          {elliptic && stopBy === 'attenuation' && <Entry of="output.stopWanted" />}
        </Fields>
        {elliptic && <Entry of="output.stopBy" form="list" />}
        {plain && <Entry of="output.traps" form="row" />}
        <NetworkPicture />
        <Figures>
          {prototype && <Result of="output.cutoff" />}
          {elliptic && <Result of="output.stopEdge" />}
          {elliptic && <Result of="output.stopLoss" />}
          {lowpass === 'chebyshev' && <Result of="output.filterEnd" />}
          <Result of="output.partCount" />
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
