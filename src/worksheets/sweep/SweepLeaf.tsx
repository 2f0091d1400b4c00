import { Button } from '../../design/Button.tsx';
import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { Fixture } from './Fixture.tsx';
import { GoodSweep } from './GoodSweep.tsx';
import { SweepPicture } from './SweepPicture.tsx';
import { SweptCrystal } from './SweptCrystal.tsx';
import { TheText } from './TheText.tsx';

/** A sweep through one crystal: the text, what was understood, and the crystal that fits it. */
export function SweepLeaf() {
  const found = useValue<number>('sweep.fs') !== null;
  const file = useValue<string>('sweep.file') !== null;
  return (
    <SheetFrame
      stage="sweep"
      main={<Result of="sweep.cm" size="main" none="wants a sweep" />}
      lead={<Lead found={found} file={file} />}
    >
      {!file && <HowToSweep />}
      <Section title="The sweep" margin={<Kinds />}>
        <TheText />
      </Section>
      <Section title="What it was taken with" margin={<Wire />}>
        <Fixture />
      </Section>
      {found && (
        <>
          <Section>
            <SweepPicture />
          </Section>
          <Section title="The crystal" margin={<Honest />}>
            <SweptCrystal />
            <Take />
            <Figures>
              <Result of="sweep.rms" />
              <Result of="sweep.peakLoss" />
              <Result of="sweep.c0From" size="small" />
            </Figures>
            <Disclosure summary="More of the fit">
              <Figures>
                <Result of="sweep.scatter" size="small" />
                <Result of="sweep.discounted" size="small" />
                <Result of="sweep.c0All" size="small" />
              </Figures>
              <Freed />
            </Disclosure>
          </Section>
        </>
      )}
      {file && <HowToSweep />}
    </SheetFrame>
  );
}

function Lead({ found, file }: { found: boolean; file: boolean }) {
  if (found) {
    return (
      <>
        The crystal of this sweep has <Read of="sweep.lm" /> and <Read of="sweep.cm" /> at{' '}
        <Read of="sweep.fs" />; <Read of="sweep.rm" or="Rm too small to tell" /> of loss, and a Q of{' '}
        <Read of="sweep.qu" or="no telling" />.
      </>
    );
  }
  if (file) return <>The text does not give a crystal yet: see what is said below.</>;
  return (
    <>
      Nothing has been swept yet. Between <Read of="sweep.resistance" /> on each side crystals of
      this frequency show a peak about <Read of="sweep.width" /> wide.
    </>
  );
}

/** Only what was freed has a figure. */
function Freed() {
  const level = useValue<number>('sweep.levelFound');
  const shunt = useValue<number>('sweep.shuntFound');
  if (level === null && shunt === null) return null;
  return (
    <Figures>
      {level !== null && (
        <>
          <Result of="sweep.levelFound" size="small" />
          <Result of="sweep.levelError" size="small" />
        </>
      )}
      {shunt !== null && (
        <>
          <Result of="sweep.shuntFound" size="small" />
          <Result of="sweep.shuntError" size="small" />
        </>
      )}
    </Figures>
  );
}

/** Quartz takes the figures over when it is told so. */
function Take() {
  const method = useValue<string>('measure.method');
  const say = useBench((s) => s.say);
  const field = fieldAt('measure.method');
  if (method === 'sweep') {
    return (
      <p>
        <a href="#quartz">Quartz</a> takes these figures, save what is typed there.
      </p>
    );
  }
  return (
    <p>
      <Button onPress={() => say('measure.method', field?.label ?? '', 'sweep')}>
        Let Quartz take these figures
      </Button>
    </p>
  );
}

function HowToSweep() {
  return (
    <Section title="A good sweep of this crystal" margin={<Slow />}>
      <GoodSweep />
    </Section>
  );
}

function Kinds() {
  return (
    <Note title="What can be read">
      <p>
        Touchstone of one or two ports, in any of its formats, and columns between commas,
        semicolons, tabs or spaces, with decimal point or comma. Two sweeps one under the other are
        sorted into one.
      </p>
      <p>
        Analysers of one path write zeros for S12 and S22: those are taken as not measured, never as
        perfect isolation.
      </p>
    </Note>
  );
}

function Wire() {
  return (
    <Note title="The wire first">
      <p>
        Sweep once with a wire in place of the crystal, and calibrate to it or type what it reads.
        Lm and fs hardly mind; Rm is the difference between the two.
      </p>
    </Note>
  );
}

function Honest() {
  return (
    <Note title="What ± is worth">
      <p>
        It is what the noise of this sweep leaves open. It says nothing of a fixture that is not
        what it is said to be: look whether what is left over has a shape.
      </p>
    </Note>
  );
}

function Slow() {
  return (
    <Caution>
      No more than 0 dBm through the crystal, and slowly: it rings on after each step. Should the
      peak move when the sweep is run the other way, it was too fast.
    </Caution>
  );
}
