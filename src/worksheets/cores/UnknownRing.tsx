import { Button } from '../../design/Button.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';
import { TrialPictures } from './TrialPictures.tsx';

/** Two trial windings on a ring without a name. */
export function UnknownRing() {
  return (
    <Section
      title="A ring without a name"
      margin={
        <>
          <Note title="Two windings, one answer">
            <p>
              Ten turns and twenty: the inductances must stand as one to four. If they don’t, a turn
              was miscounted, or leads and meter add something of their own.
            </p>
          </Note>
          <Note title="At which frequency?">
            <p>
              Many meters measure at audio frequency. Iron powder is the same there; a ferrite has
              its full permeability there and much less of it at work. Small coils drown in the
              meter’s own error: wind more turns.
            </p>
          </Note>
        </>
      }
    >
      <Fields title="Two trials">
        <Entry of="cores.turns1" />
        <Entry of="cores.trial1" />
        <Entry of="cores.turns2" />
        <Entry of="cores.trial2" />
      </Fields>
      <TrialPictures />
      <Figures>
        <Result of="cores.al" none="no trial yet" />
        <Result of="cores.al1" none="no trial yet" />
        <Result of="cores.al2" none="no trial yet" />
        <Result of="cores.apart" none="needs both" />
        <Result of="cores.agreement" none="needs both" />
        <Result of="cores.offset" none="needs both" />
      </Figures>
      <Say of="cores.doubt" />
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
      <IntoTheBox />
    </Section>
  );
}

/** Adds the ring as one more line of the box. */
function IntoTheBox() {
  const line = useValue<string>('cores.line');
  const box = useBench((s) => s.rig.entries['cores.box']?.text ?? '');
  const sayAll = useBench((s) => s.sayAll);
  if (line === null) return null;
  const add = () =>
    sayAll(
      { 'cores.box': `${box}${box === '' || box.endsWith('\n') ? '' : '\n'}${line}` },
      'Ring put into the box',
      'cores.box',
    );
  return (
    <p>
      <Button onPress={add}>Put it into the box</Button>
    </p>
  );
}
