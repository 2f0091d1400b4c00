import { Caution } from '../../design/Caution.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Notes } from './Notes.tsx';
import { OwnRules } from './OwnRules.tsx';

/** What the rig is to do: the entries that everything else hangs on. */
export function PlanSheet() {
  const own = useValue<string>('plan.rules') === 'own';
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <SheetFrame
      stage="plan"
      main={<Result of="plan.nominal" size="main" />}
      lead={
        <>
          A rig for <Read of="plan.nominal" or="a frequency still to be said" />,{' '}
          <Read of="plan.sideband" />, that makes <Write of="plan.pep" /> at the crest of the voice
          from a supply of <Write of="plan.supply" />.
        </>
      }
    >
      <Section>
        <Notes />
      </Section>
      <Section
        title="Frequency and sideband"
        margin={
          converts ? (
            <Note title="With conversion">
              <p>
                Crystals from any bag will do, and the rig can be tuned. It takes a second
                oscillator, a mixer each way and a band-pass, and every product of the two
                oscillators has to miss the band: see the leaves of the Carrier sheet.
              </p>
            </Note>
          ) : (
            <Note title="Which to give?">
              <p>
                A rig without conversion works where its crystals are. Give the marking on the cans
                and let the Carrier sheet find the exact frequency; or give the frequency of your
                net and see whether the crystals can be pulled there.
              </p>
            </Note>
          )
        }
      >
        <Entry of="plan.scheme" form="row" />
        <Fields>
          <Entry of="plan.marking" />
          <Entry of="plan.frequency" />
        </Fields>
        <Entry of="plan.sideband" />
        {converts && <Entry of="plan.side" form="list" />}
        <Figures>
          <Result of="plan.band" />
          <Result of="plan.wavelength" />
          {converts && <Result of="plan.filterFrequency" />}
          {converts && <Result of="plan.filterSideband" />}
        </Figures>
      </Section>
      <Section title="Power, supply and antenna">
        <Fields>
          <Entry of="plan.pep" />
          <Entry of="plan.supply" />
          <Entry of="plan.antenna" />
          <Entry of="plan.ambient" />
        </Fields>
        <Figures>
          <Result of="plan.pepLevel" />
          <Result of="plan.antennaVpp" />
          <Result of="plan.antennaCurrent" />
        </Figures>
      </Section>
      <Section
        title="Rules on harmonics"
        margin={
          <Note title="Below what?">
            <p>
              Some rules count from the mean power, some from the peak envelope power. With one
              steady tone at full drive the two are the same, so every rule is held against that
              tone. Rules for transmitters above 30 MHz are not asked of a shortwave rig’s harmonics
              that fall there.
            </p>
          </Note>
        }
      >
        <Entry of="plan.rules" form="list" />
        <Say of="output.rule" />
        {own && <OwnRules />}
        <Caution>
          Transmit only with a licence for the band and the power, and into a dummy load until the
          output has been measured. The limits here are planning figures: local rules decide, and
          the operator answers for the station. A battery needs a fuse at its terminal, a bench
          supply its current limit: a short circuit heats leads enough to burn.
        </Caution>
      </Section>
    </SheetFrame>
  );
}
