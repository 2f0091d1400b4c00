import { Caution } from '../../design/Caution.tsx';
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
import { BudgetPicture } from './BudgetPicture.tsx';

/** What the rig draws, how long a battery lasts, and what stands between the two. */
export function SupplyLeaf() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <SheetFrame
      stage="supply"
      main={<Result of="supply.hours" size="main" />}
      lead={
        <>
          Listening draws <Read of="supply.listening" or="a current still open" />, a steady tone{' '}
          <Read of="supply.tone" or="a current still open" />. With <Write of="supply.talking" /> of
          the time on transmit, <Write of="supply.capacity" /> last{' '}
          <Read of="supply.hours" or="a time still open" />.
        </>
      }
    >
      <Section
        title="Who draws how much"
        margin={
          <Note title="Stage by stage">
            <p>
              Feed each stage through a meter once, before it joins the others: a wrong current is
              the first sign of a wrong resistor or a short.
            </p>
          </Note>
        }
      >
        <BudgetPicture />
        <Rows of="supply.budget" caption="Current by stage" narrow="scroll" />
        <Figures>
          <Result of="supply.listening" />
          <Result of="supply.quiet" />
          <Result of="supply.speech" />
          <Result of="supply.tone" />
          <Result of="supply.power" />
          <Result of="supply.limit" />
        </Figures>
        <Fields>
          <Entry of="supply.relay" />
          <Entry of="supply.extras" />
          {converts && <Entry of="supply.conversion" />}
        </Fields>
      </Section>
      <Section
        title="The battery"
        margin={
          <Note title="A flat battery whispers">
            <p>
              The final’s power goes with the square of the volts. The last hour of a battery is
              heard at the other end.
            </p>
          </Note>
        }
      >
        <Entry of="supply.battery" form="list" />
        <Fields>
          <Entry of="supply.capacity" />
          <Entry of="supply.talking" />
        </Fields>
        <Figures>
          <Result of="supply.hours" />
          <Result of="supply.mean" />
          <Result of="supply.endVoltage" />
          <Result of="supply.endPower" />
        </Figures>
      </Section>
      <Section
        title="Fuse and leads"
        margin={
          <Note title="What the fuse protects">
            <p>
              Not the rig but the leads: a battery gives hundreds of amperes into a short, and a
              lead that glows sets a bench on fire. So it sits at the battery, not in the rig.
            </p>
          </Note>
        }
      >
        <Entry of="supply.lead" form="list" />
        <Fields>
          <Entry of="supply.leadLength" />
          <Entry of="supply.dropAllowed" />
        </Fields>
        <Figures>
          <Result of="supply.fuse" none="beyond the list" />
          <Result of="supply.leadDrop" />
          <Result of="supply.leadShare" />
          <Result of="supply.leadOutcome" />
        </Figures>
        <Say of="supply.leadWords" />
        <Caution>
          A fuse at the battery’s terminal, always; a diode or a fuse and a diode against a reversed
          plug. Lithium cells only with their own protection and charger. Mains supplies: closed,
          earthed, made for the purpose, and never opened with the plug in.
        </Caution>
      </Section>
    </SheetFrame>
  );
}
