import { Caution } from '../../design/Caution.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { NoiseHeard } from '../bound/NoiseHeard.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Write } from '../bound/Write.tsx';
import { DirectPower } from './DirectPower.tsx';
import { Expect } from './Expect.tsx';
import { Instruments } from './Instruments.tsx';
import { Overall } from './Overall.tsx';
import { TestPoints } from './TestPoints.tsx';

/** The finished rig against its design, in the order in which it is switched on. */
export function BenchSheet() {
  const cautions = useValue<string>('bench.cautions');
  return (
    <SheetFrame
      stage="bench"
      main={<Overall />}
      lead={
        <>
          One steady tone at full power should show{' '}
          <Expect at="Output, voltage at the dummy load" /> across a dummy load of{' '}
          <Write of="bench.dummyLoad" />, which is <Expect at="Output, power into the dummy load" />
          , and draw <Expect at="Final’s lead, at full power" /> in the final’s lead.
        </>
      }
    >
      <div className="bench-paper" aria-hidden="true">
        <span>Rig</span>
        <span>Measured by</span>
        <span>Date</span>
        <span>Instruments</span>
      </div>
      <Section
        margin={
          <Note title="How it judges">
            <p>
              Within the range a reading holds; within twice as much it is close. A rule has no
              range: it is met, met with too little to spare, or broken. What is better than
              expected is no fault where only one side counts.
            </p>
          </Note>
        }
      >
        <Say of="bench.summary" />
        {cautions !== null && <Caution>{cautions}</Caution>}
      </Section>
      <Section>
        <TestPoints caption="Receiver, oscillator and filter" from={1} to={9} />
        <NoiseHeard />
      </Section>
      <Section>
        <TestPoints caption="Transmitter, stage by stage" from={10} to={15} />
      </Section>
      <Section>
        <TestPoints caption="What comes out" from={16} to={99} />
      </Section>
      <DirectPower />
      <Instruments />
    </SheetFrame>
  );
}
