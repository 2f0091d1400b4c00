import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useOrigin, useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';

const keys = ['fs', 'lm', 'cm', 'rm', 'qu', 'c0', 'fp'] as const;

/** The crystal's equivalent circuit, from whatever of it is known. */
export function QuartzSheet() {
  return (
    <SheetFrame
      stage="quartz"
      main={<Result of="quartz.cm" size="main" />}
      lead={
        <>
          Crystals with <Read of="quartz.lm" /> and <Read of="quartz.cm" /> resonating at{' '}
          <Read of="quartz.fs" />, in a holder of <Read of="quartz.c0" />, with a Q of{' '}
          <Read of="quartz.qu" />.
        </>
      }
    >
      <Section
        title="What you know of them"
        margin={
          <Note title="Any sufficient set will do">
            <p>
              Frequency and one of Lm or Cm; Rm or Q; C0. What is left blank is taken from the
              measurement or the bag, worked out from the rest, or guessed from frequency and holder
              and marked so.
            </p>
            <p>
              A guess is good for a first look, not for buying capacitors: the width of the filter
              goes with Cm.
            </p>
          </Note>
        }
      >
        <Entry of="quartz.holder" />
        <Fields>
          {keys.map((key) => (
            <Given key={key} of={key} />
          ))}
        </Fields>
      </Section>
      <Section title="The crystal as it is used from here on">
        <Figures>
          <Result of="quartz.lm" />
          <Result of="quartz.fs" />
          <Result of="quartz.fp" />
          <Result of="quartz.rm" />
          <Result of="quartz.qu" />
          <Result of="quartz.c0" />
        </Figures>
        <Say of="quartz.whence" />
      </Section>
      <Section
        title="What follows from it"
        margin={
          <Note title="Compare the marking">
            <p>
              Crystals are marked for a load, mostly 20 pF. If the figure here lies far from what is
              printed on the can, one of the values above is off.
            </p>
          </Note>
        }
      >
        <Figures>
          <Result of="quartz.marking20" />
          <Result of="quartz.ratio" />
          <Result of="quartz.ring" />
        </Figures>
      </Section>
    </SheetFrame>
  );
}

/** An entry that shows, while blank, what is used in its stead. */
function Given({ of }: { of: (typeof keys)[number] }) {
  const value = useValue<number>(`quartz.${of}`);
  const origin = useOrigin(`quartz.${of}`);
  const field = fieldAt(`quartz.${of}`);
  const typical = field && value !== null ? shown(field, value) : undefined;
  return <Entry of={`quartz.${of}Given`} typical={typical} typicalOrigin={origin} />;
}
