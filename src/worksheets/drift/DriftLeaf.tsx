import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { WarmthPicture } from './WarmthPicture.tsx';

/** What moves the carrier, what the trimmer has to cover, and ways out where it is out of reach. */
export function DriftLeaf() {
  const ways = useValue<readonly unknown[]>('drift.waysOut') ?? [];
  return (
    <SheetFrame
      stage="drift"
      main={<Result of="drift.wanders" size="main" />}
      lead={
        <>
          Warming by <Write of="drift.warmer" /> moves the carrier by{' '}
          <Read of="drift.wanders" or="what is still unknown" />, and away from its filter by{' '}
          <Read of="drift.against" or="as much" />.
        </>
      }
    >
      {ways.length > 0 && (
        <Section
          title="Out of reach: ways out"
          margin={
            <Note title="In the order of what they cost">
              <p>
                Another crystal costs nothing; another filter costs an evening. Each line is the
                same sum with that one thing changed.
              </p>
            </Note>
          }
        >
          <Rows of="drift.waysOut" caption="The cheapest first" />
        </Section>
      )}
      <Section
        title="With warmth"
        margin={
          <Note title="They drift together">
            <p>
              Filter and carrier crystals are of one cut, so the voice keeps its pitch against the
              filter even where the dial wanders. What parts them are the capacitors that pull.
            </p>
          </Note>
        }
      >
        <WarmthPicture />
        <Fields>
          <Entry of="drift.slope" />
          <Entry of="drift.capacitors" />
          <Entry of="drift.coil" />
        </Fields>
        <Figures>
          <Result of="drift.perDegree" />
          <Result of="drift.ofCrystal" />
          <Result of="drift.ofParts" />
          <Result of="drift.ofTransistor" />
          <Result of="drift.against" />
        </Figures>
      </Section>
      <Section
        title="What the trimmer has to cover"
        margin={
          <Note title="Set it last">
            <p>
              With the buffer connected, the board in its place and an hour warm. A counter at the
              buffer’s output, never at the crystal.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="drift.spread" />
          <Entry of="drift.partSpread" />
        </Fields>
        <Figures>
          <Result of="drift.leastC" />
          <Result of="drift.mostC" />
          <Result of="drift.covers" />
        </Figures>
        <Say of="drift.trimmer" />
        <Disclosure summary="The buffer’s share">
          <Fields>
            <Entry of="drift.buffer" />
            <Entry of="drift.bufferResistance" />
          </Fields>
          <Figures>
            <Result of="drift.bufferPull" />
            <Result of="drift.startLoaded" />
          </Figures>
        </Disclosure>
      </Section>
    </SheetFrame>
  );
}
