import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Read } from '../bound/Write.tsx';
import { BudgetPicture } from './BudgetPicture.tsx';

/** Currents by stage and by state. */
export function Draws() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <Section
      title="What it draws"
      margin={
        <>
          <Note title="Stage by stage">
            <p>
              Feed each stage through a meter once, before it joins the others: a wrong current is
              the first sign of a wrong resistor or a short. Bench expects{' '}
              <Read of="supply.receiving" /> on receive and <Read of="supply.tone" /> at full power.
            </p>
          </Note>
          <Note title="Speech is not a tone">
            <p>
              Key down and silent: <Read of="supply.silent" />. Speaking:{' '}
              <Read of="supply.speech" />, far under the tone’s, because the envelope of a voice is
              mostly low. Its peaks reach the tone’s all the same: leads and supply must bear them.
            </p>
          </Note>
        </>
      }
    >
      <BudgetPicture />
      <Rows of="supply.states" caption="State by state" />
      <Figures>
        <Result of="supply.power" />
        <Result of="supply.limit" />
      </Figures>
      <Fields>
        <Entry of="supply.oscillator" />
        <Entry of="supply.preamp" />
        {converts && <Entry of="supply.conversion" />}
        <Entry of="supply.relay" />
        <Entry of="supply.extras" />
      </Fields>
      <Disclosure summary="Current of each stage in each state">
        <Rows of="supply.budget" caption="Current by stage" narrow="stack" />
      </Disclosure>
    </Section>
  );
}
