import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** The two-diode modulator: its loss, its null, and the pad behind. */
export function Modulator() {
  return (
    <>
      <Section
        title="The modulator"
        margin={
          <>
            <Note title="Carrier strong, audio weak">
              <p>
                The carrier switches the diodes, the audio rides along. With less than 10 dB between
                them the voice does some of the switching, and it splatters.
              </p>
            </Note>
            <Note title="Which switch is it?">
              <p>
                Diodes that take turns reverse the audio: 2/π comes through, 3.92 dB. Diodes that
                conduct together switch it on and off: 1/π, 9.94 dB. Waiting for the diode’s knee
                and its resistance add to either.
              </p>
            </Note>
          </>
        }
      >
        <Entry of="transmit.modulatorAction" form="list" />
        <Entry of="transmit.modulatorDiode" form="list" />
        <Fields>
          <Entry of="transmit.carrierDrive" />
          <Entry of="transmit.pad" />
          <Entry of="transmit.modulatorImpedance" />
          <Entry of="transmit.modulatorWinding" />
        </Fields>
        <Figures>
          <Result of="transmit.modulatorLoss" />
          <Result of="transmit.audioVolts" />
          <Result of="transmit.audioLevel" />
          <Result of="transmit.modulatorMargin" />
        </Figures>
        <Disclosure summary="How the loss comes about, and a measured one">
          <Figures>
            <Result of="transmit.modulatorIdeal" />
            <Result of="transmit.modulatorKnee" />
            <Result of="transmit.modulatorOn" />
          </Figures>
          <Fields>
            <Entry of="transmit.conversionLoss" />
          </Fields>
        </Disclosure>
      </Section>
      <Section
        title="Its null"
        margin={
          <>
            <Note title="Two things to null">
              <p>
                A resistor takes out what is unequal in phase: diodes, windings. What unequal
                capacitance lets through stands at a right angle to that, and only a few picofarads
                at the weaker half take it out. Go back and forth between the two.
              </p>
            </Note>
            <Note title="More audio, better null">
              <p>
                What is left of the carrier stays as it is. A sideband made at a higher level, with
                more pad behind, stands further above it.
              </p>
            </Note>
          </>
        }
      >
        <Fields>
          <Entry of="transmit.nullTrimmer" />
          <Entry of="transmit.nullTurns" />
          <Entry of="transmit.nullSetting" />
          <Entry of="transmit.nullMismatch" />
          <Entry of="transmit.nullCapacitance" />
          <Entry of="transmit.null" />
        </Fields>
        <Figures>
          <Result of="transmit.modulatorNull" />
          <Result of="transmit.modulatorBalance" />
          <Result of="transmit.balance" />
          <Result of="transmit.nullInPhase" />
          <Result of="transmit.nullQuadrature" />
          <Result of="transmit.nullReach" />
        </Figures>
      </Section>
    </>
  );
}
