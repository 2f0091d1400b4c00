import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entries } from '../bound/Entries.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** The final: its load, its bias, and what the meter shows. */
export function Final() {
  const byAngle = useValue<string>('transmit.biasBy') === 'angle';
  const form = useValue<string>('transmit.finalForm');
  return (
    <>
      <Section
        title="The final"
        margin={
          <Note title="A load line, no match">
            <p>
              The load is chosen so that the collector swings over the whole supply when the wanted
              power flows. Into 50 Ω straight on, the same transistor gives far less.
            </p>
          </Note>
        }
      >
        <Entry of="transmit.finalDevice" form="list" />
        <Entry of="transmit.finalForm" form="row" />
        {form !== 'single' && (
          <Fields>
            <Entry of="transmit.finalDevices" />
            {form === 'pushPull' && <Entry of="transmit.evenBalance" />}
          </Fields>
        )}
        <Fields>
          <Entry of="transmit.finalGain" />
          <Entry of="transmit.saturation" />
          <Entry of="transmit.network" />
          <Entry of="transmit.finalInput" />
        </Fields>
        <Entry of="transmit.biasBy" form="row" />
        <Fields>
          {byAngle ? <Entry of="transmit.angle" /> : <Entry of="transmit.standing" />}
        </Fields>
        <Figures>
          <Result of="transmit.collectorLoad" />
          <Result of="transmit.collectorPower" />
          <Result of="transmit.operating" />
          <Result of="transmit.conductionAngle" />
          <Result of="transmit.straightOn" />
          <Result of="transmit.ratioNeeded" />
        </Figures>
        <Say of="transmit.ratioWords" />
        <Say of="transmit.standingAdvice" />
      </Section>
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
        <Fields>
          <Entry of="transmit.supplyResistance" />
        </Fields>
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
    </>
  );
}

function partOf(index: number): string {
  if (index === 0) return 'direct current';
  return index === 1 ? 'fundamental' : `harmonic ${index}`;
}
