import { Caution } from '../../design/Caution.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { PatternPicture } from './PatternPicture.tsx';

/** The antenna over its ground: where the power goes, and how much of it. */
export function AntennaLeaf() {
  const kind = useValue<string>('antenna.kind') ?? 'known';
  const known = kind === 'known';
  return (
    <SheetFrame
      stage="antenna"
      main={
        known ? <Result of="path.gainHere" size="main" /> : <Result of="antenna.best" size="main" />
      }
      lead={
        known ? (
          <>
            The antenna’s gain is taken as typed on the Path leaf:{' '}
            <Read of="path.gainHere" or="not said" />. Say what it is, and it is worked out for each
            ray.
          </>
        ) : (
          <>
            Of the power, <Read of="antenna.efficiency" /> is radiated, most of it{' '}
            <Read of="antenna.bestAt" /> over the horizon: it suits <Read of="antenna.good" />.
          </>
        )
      }
    >
      <Section
        title="The antenna"
        margin={
          <Note title="Height or ground">
            <p>
              A level wire low down sends its power up, and it comes back nearby; high up it goes
              out flat. A vertical sends flat from the start, and pays for it in the ground around.
            </p>
          </Note>
        }
      >
        <Entry of="antenna.kind" form="list" />
        {!known && <Made kind={kind} />}
        <Entry of="antenna.ground" form="list" />
        <Entry of="antenna.far" form="row" />
      </Section>
      {!known && (
        <>
          <Section>
            <PatternPicture />
            <Say of="antenna.nature" />
          </Section>
          <Section title="What becomes of the power">
            <Figures>
              <Result of="antenna.best" />
              <Result of="antenna.bestAt" />
              <Result of="antenna.good" />
              <Result of="antenna.efficiency" />
              <Result of="antenna.radiation" />
              {(kind === 'vertical' || kind === 'whip') && <Result of="antenna.losses" />}
              {(kind === 'dipole' || kind === 'endFed') && <Result of="antenna.over" />}
              <Result of="antenna.along" />
              <Result of="antenna.free" />
            </Figures>
          </Section>
        </>
      )}
      <Section>
        <Caution>
          Keep people away from an antenna that transmits, and from its ends above all: there the
          volts are highest and burn. The Path leaf says how far. Keep every wire clear of power
          lines, and of where it could fall on one; earth it or take it in before a thunderstorm.
        </Caution>
      </Section>
    </SheetFrame>
  );
}

function Made({ kind }: { kind: string }) {
  const level = kind === 'dipole' || kind === 'endFed';
  return (
    <Fields>
      {level && <Entry of="antenna.height" />}
      {level && <Entry of="antenna.off" />}
      {kind === 'whip' && <Entry of="antenna.length" />}
      {kind === 'whip' && <Entry of="antenna.coilQ" />}
      {kind === 'whip' && <Entry of="antenna.wire" />}
      {!level && <Entry of="antenna.groundLoss" />}
      <Entry of="antenna.matching" />
    </Fields>
  );
}
