import { Button } from '../../design/Button.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';

/** Which cores lie in the box, and what the unmarked one is. */
export function CoresLeaf() {
  return (
    <SheetFrame
      stage="cores"
      main={<Result of="cores.pieces" size="main" />}
      lead={
        <>
          <Read of="cores.pieces" or="No" /> cores are listed. Tuned coils take{' '}
          <Read of="cores.coilCore" />.
        </>
      }
    >
      <Section
        title="What is in the box"
        margin={
          <Note title="Colours lie">
            <p>
              Red and yellow are customs, not laws, and grey says nothing at all. A ring without a
              name is wound twice and measured, below.
            </p>
          </Note>
        }
      >
        <Pasted of="cores.box" files=".txt,.csv,text/plain" />
        <Rows of="cores.listed" caption="As it was read" />
      </Section>
      <Section
        title="What to wind on"
        margin={
          <Note title="One choice for all">
            <p>
              Output reckons with the coils as these cores make them, Windings says how to wind
              them: both take from here.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="cores.coilCore" form="list" />
          <Entry of="cores.wire" form="list" />
          <Entry of="cores.tail" />
        </Fields>
      </Section>
      <Unknown />
    </SheetFrame>
  );
}

/** Two trial windings on a ring without a name. */
function Unknown() {
  const line = useValue<string>('cores.line');
  const box = useBench((s) => s.rig.entries['cores.box']?.text ?? '');
  const sayAll = useBench((s) => s.sayAll);
  const add = () =>
    sayAll(
      { 'cores.box': `${box}${box === '' || box.endsWith('\n') ? '' : '\n'}${line ?? ''}` },
      'Ring put into the box',
      'cores.box',
    );
  return (
    <Section
      title="A ring without a name"
      margin={
        <Note title="Two windings, one answer">
          <p>
            Ten turns and twenty: the inductances must stand as one to four. If they don’t, a turn
            was miscounted, or the meter is out of its depth: many measure at audio frequencies,
            where ferrites are others.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="cores.turns1" />
        <Entry of="cores.trial1" />
        <Entry of="cores.turns2" />
        <Entry of="cores.trial2" />
      </Fields>
      <Figures>
        <Result of="cores.al1" none="no trial yet" />
        <Result of="cores.al2" none="no trial yet" />
        <Result of="cores.apart" none="needs both" />
        <Result of="cores.agreement" none="needs both" />
        <Result of="cores.al" none="no trial yet" />
      </Figures>
      <Fields title="Its dimensions">
        <Entry of="cores.outer" />
        <Entry of="cores.inner" />
        <Entry of="cores.height" />
      </Fields>
      <Figures>
        <Result of="cores.permeability" none="needs a trial and the dimensions" />
      </Figures>
      <Say of="cores.likely" />
      <Say of="cores.line" />
      {line !== null && (
        <p>
          <Button onPress={add}>Put it into the box</Button>
        </p>
      )}
    </Section>
  );
}
