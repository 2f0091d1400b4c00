import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entries } from '../bound/Entries.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** What the meters show, whether a reading can be true, and what lies inside. */
export function Meters() {
  return (
    <Section
      title="What the meters show"
      margin={
        <Note title="Is the power reading true?">
          <p>
            Radio power over direct power can’t be more than the efficiency here. A reading that
            says so comes from a wrong probe setting or a wrong load.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="transmit.supplyResistance" />
      </Fields>
      <Figures>
        <Result of="transmit.quiescent" />
        <Result of="transmit.dcCurrent" />
        <Result of="transmit.twoToneCurrent" />
        <Result of="transmit.twoToneMean" />
        <Result of="transmit.supplyPeak" />
        <Result of="transmit.supplySpeech" />
        <Result of="transmit.efficiency" />
        <Result of="transmit.overall" />
        <Result of="transmit.mostOverall" />
        <Result of="transmit.sagVoltage" />
        <Result of="transmit.sagPower" />
      </Figures>
      <Say of="transmit.sanity" />
      <Disclosure summary="Inside the final: pulse, harmonics, gain">
        <Figures>
          <Result of="transmit.peakCurrent" size="small" />
          <Result of="transmit.peakEach" size="small" />
          <Result of="transmit.fundamental" size="small" />
          <Result of="transmit.outputImpedance" size="small" />
          <Result of="transmit.currentGainAsked" size="small" />
          <Result of="transmit.currentGainThere" size="small" />
        </Figures>
        <Entries of="transmit.harmonicCurrents" heading="Part of the current" nameOf={partOf} />
      </Disclosure>
    </Section>
  );
}

function partOf(index: number): string {
  if (index === 0) return 'direct current';
  return index === 1 ? 'fundamental' : `harmonic ${index}`;
}
