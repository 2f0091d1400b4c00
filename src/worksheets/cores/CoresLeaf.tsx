import { Caution } from '../../design/Caution.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { UnknownRing } from './UnknownRing.tsx';

const EXAMPLE = 'T50-2 x5\nFT37-43 3\nblack ring: OD 12.7 ID 7.7 h 4.8, AL 4.9n, x2';

/** Which cores lie in the box, whether they are enough, and what the unmarked one is. */
export function CoresLeaf() {
  return (
    <SheetFrame
      stage="cores"
      main={<Result of="cores.pieces" size="main" />}
      lead={
        <>
          <Read of="cores.pieces" or="No" /> cores are listed. <WoundOn />
        </>
      }
    >
      <Section
        title="What is in the box"
        margin={
          <>
            <Note title="How it is read">
              <p>
                A line for each kind, name and number of pieces in any order. A ring without a name
                wants its dimensions in millimetres and its factor with a prefix: 4.9n, or 49
                µH/100.
              </p>
            </Note>
            <Note title="Colours lie">
              <p>
                Red and yellow are customs, not laws, and grey says nothing at all. A ring without a
                name is wound twice and measured, below.
              </p>
            </Note>
          </>
        }
      >
        <Pasted of="cores.box" lines={5} example={EXAMPLE} files=".txt,.csv,text/plain" />
        <Rows of="cores.listed" caption="As it was read" />
      </Section>
      <Section
        title="What to wind on"
        margin={
          <Note title="One choice for all">
            <p>
              Output reckons with the coils as these cores make them, Windings says how to wind
              them. From the box each coil takes a piece; when nothing that is left will do, it says
              so, and what would.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="cores.coilCore" form="list" />
          <Entry of="cores.wire" form="list" />
          <Entry of="cores.tail" />
        </Fields>
        <Rows
          of="windings.coresNeeded"
          caption="What the rig takes, and what is to get"
          columns={['core', 'goes', 'needed', 'boxed', 'toGet']}
        />
      </Section>
      <UnknownRing />
      <Section>
        <Caution>
          A permeability says nothing of the loss. Before an unmarked ring goes into a transmitter,
          give it a minute of full power into a dummy load, switch off, then feel it: too hot to
          touch is the wrong core.
        </Caution>
      </Section>
    </SheetFrame>
  );
}

/** What tuned coils are wound on, in a sentence. */
function WoundOn() {
  const core = useValue<string>('cores.coilCore') ?? 'auto';
  const said: Readonly<Record<string, string>> = {
    auto: 'Each tuned coil is wound on the smallest core that suffices, whether it is listed or not.',
    box: 'Each tuned coil takes the smallest of them that suffices.',
    air: 'Tuned coils are wound on air.',
  };
  return said[core] ?? `Tuned coils are wound on ${core}.`;
}
