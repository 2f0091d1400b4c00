import { Caution } from '../../design/Caution.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { LinesPicture } from './LinesPicture.tsx';

/** The line between rig and antenna, and the one at the other station. */
export function FeedLeaf() {
  const known = useValue<string>('feed.line') === 'known';
  return (
    <SheetFrame
      stage="feed"
      main={<Result of="feed.loss" size="main" />}
      lead={
        known ? (
          <>
            The line takes <Write of="feed.knownLoss" />, as typed. Say what line it is and how
            long, and its loss is worked out.
          </>
        ) : (
          <>
            <Write of="feed.length" /> of <Read of="feed.line" /> take <Read of="feed.loss" />: of{' '}
            <Read of="output.pepAntenna" or="the power wanted" />,{' '}
            <Read of="path.atAntenna" or="a part" /> come to the antenna.
          </>
        )
      }
    >
      <Here known={known} />
      <Section
        title="The same length of other lines"
        margin={
          <Note title="Wide line, high SWR">
            <p>
              Open wire loses so little that a standing wave on it hardly matters: what goes to and
              fro ten times over next to nothing is still next to nothing. It wants a tuner, and
              room from metal.
            </p>
          </Note>
        }
      >
        <LinesPicture />
        <Rows of="feed.kinds" />
      </Section>
      <There />
    </SheetFrame>
  );
}

function Here({ known }: { known: boolean }) {
  return (
    <Section
      title="The line here"
      margin={
        <Note title="A good SWR may be a bad line">
          <p>
            What the antenna throws back is weakened on its way to the rig. A long, lossy line shows
            a fine SWR whatever hangs at its end: measure at the antenna.
          </p>
        </Note>
      }
    >
      <Entry of="feed.line" form="list" />
      <Fields>
        {known && <Entry of="feed.knownLoss" />}
        <Entry of="feed.length" />
        <Entry of="feed.swr" />
      </Fields>
      {!known && (
        <Figures>
          <Result of="feed.loss" />
          <Result of="feed.matched" />
          <Result of="feed.added" />
          <Result of="feed.swrUsed" />
          <Result of="feed.swrRig" />
          <Result of="path.atAntenna" />
        </Figures>
      )}
      <Caution>
        Where a standing wave peaks, a few watts make more than a hundred volts on open wire: out of
        everybody’s reach, and never touched while transmitting. Radio frequency burns deep.
      </Caution>
    </Section>
  );
}

function There() {
  const known = useValue<string>('feed.farLine') === 'known';
  return (
    <Section
      title="The line there"
      margin={
        <Note title="Only half as bad">
          <p>
            A line at the listening end takes signal and band noise alike. It costs what it says
            when the other station sends, and next to nothing when it hears.
          </p>
        </Note>
      }
    >
      <Entry of="feed.farLine" form="list" />
      <Fields>
        {known ? (
          <Entry of="feed.farKnownLoss" />
        ) : (
          <>
            <Entry of="feed.farLength" />
            <Entry of="feed.farSwr" />
          </>
        )}
      </Fields>
      {!known && (
        <Figures>
          <Result of="feed.farLoss" />
          <Result of="feed.farMatched" />
          <Result of="feed.farSwrUsed" />
        </Figures>
      )}
    </Section>
  );
}
