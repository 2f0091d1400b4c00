import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { DischargePicture } from './DischargePicture.tsx';

/** How long a battery lasts, and what is left of the power at its end. */
export function Battery() {
  return (
    <Section
      title="The battery"
      margin={
        <>
          <Note title="A flat battery whispers">
            <p>
              The final’s power goes with the square of the volts it can swing. The last hour of a
              battery is heard at the other end, and speech peaks clip first.
            </p>
          </Note>
          <Note title="Printed hours">
            <p>
              A lead battery’s capacity is drawn in twenty hours; drawn in two it gives far less.
              Lithium hardly cares.
            </p>
          </Note>
        </>
      }
    >
      <Entry of="supply.battery" form="list" />
      <Fields>
        <Entry of="supply.capacity" />
        <Entry of="supply.talking" />
        <Entry of="supply.cells" />
      </Fields>
      <Figures>
        <Result of="supply.mean" />
        <Result of="supply.strung" />
        <Result of="supply.fullVoltage" />
        <Result of="supply.endVoltage" />
        <Result of="supply.endPower" />
        <Result of="supply.endLoss" none="nothing left" />
      </Figures>
      <DischargePicture />
    </Section>
  );
}
