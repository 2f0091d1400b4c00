import { Disclosure } from '../../design/Disclosure.tsx';
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
import { Read } from '../bound/Write.tsx';
import { CarrierPicture } from './CarrierPicture.tsx';
import { OwnCrystal } from './OwnCrystal.tsx';

/** Where the carrier goes, what becomes of both sidebands, and how the crystal is pulled there. */
export function CarrierSheet() {
  const rule = useValue<string>('carrier.rule');
  const part = useValue<string>('carrier.part');
  return (
    <SheetFrame
      stage="carrier"
      main={<Result of="carrier.frequency" size="main" />}
      lead={
        <>
          The carrier at <Read of="carrier.frequency" /> gives <Read of="carrier.sideband" />, hears{' '}
          <Read of="carrier.audioLow6" /> to <Read of="carrier.audioHigh6" />, and leaves the other
          sideband <Read of="carrier.suppression1k" /> down at 1 kHz.
        </>
      }
    >
      <Section
        title="Where to put it"
        margin={
          <Note title="Two rules of thumb">
            <p>
              “20 dB down the skirt” and “300 Hz outside the edge” agree only near six crystals. On
              the gentler skirt of four, 20 dB lies farther out and the voice turns thin; on a
              steeper one, nearer. The table says what each costs on this filter.
            </p>
          </Note>
        }
      >
        <Entry of="carrier.rule" form="list" />
        <Fields>
          {rule === 'attenuation' && <Entry of="carrier.attenuationGiven" />}
          {rule === 'offset' && <Entry of="carrier.offsetGiven" />}
          {rule === 'frequency' && <Entry of="carrier.frequencyGiven" />}
        </Fields>
        <Figures>
          <Result of="carrier.aboveFs" />
          <Result of="carrier.attenuation" />
          <Result of="carrier.outside" />
        </Figures>
        <Rows
          of="carrier.rules"
          columns={[
            'rule',
            'frequency',
            'outside',
            'attenuation',
            'audioLow6',
            'suppression300',
            'suppression1k',
            part === 'coil' ? 'seriesL' : 'seriesC',
          ]}
        />
      </Section>
      <Section>
        <CarrierPicture />
        <Figures>
          <Result of="carrier.suppression300" />
          <Result of="carrier.suppression1k" />
          <Result of="carrier.suppressionWorst" />
          <Result of="carrier.audioLow6" />
          <Result of="carrier.audioHigh6" />
          <Result of="carrier.audioLow3" />
          <Result of="carrier.audioHigh3" />
        </Figures>
      </Section>
      <Section
        title="Which sideband comes out"
        margin={
          <Note title="Worked, not quoted">
            <p>
              Printed rules for the sideband are often wrong. Here a tone is pushed through the
              modulator and both products are held against the filter.
            </p>
          </Note>
        }
      >
        <Rows of="carrier.tone" />
        <Figures>
          <Result of="carrier.sideband" />
        </Figures>
      </Section>
      <Section
        title="Pulling the crystal there"
        margin={
          <Note title="Which way?">
            <p>
              A capacitor in series raises the frequency, a coil lowers it: the smaller the
              capacitor or the larger the coil, the farther.
            </p>
          </Note>
        }
      >
        <Figures>
          {part === 'coil' ? <Result of="carrier.seriesL" /> : <Result of="carrier.seriesC" />}
          <Result of="carrier.part" />
          <Result of="carrier.loadCapacitance" />
          <Result of="carrier.reachLow" />
          <Result of="carrier.reachHigh" />
          <Result of="carrier.bare" />
          {part === 'coil' ? <Result of="carrier.stockL" /> : <Result of="carrier.stockC" />}
          <Result of="carrier.stockFrequency" />

          <Result of="carrier.hzPerPf" />
        </Figures>
        <Say of="carrier.trimmer" />
        <Fields title="The oscillator">
          <Entry of="carrier.c1" />
          <Entry of="carrier.c2" />
          <Entry of="carrier.stray" />
          <Entry of="carrier.crystals" />
        </Fields>
        <OwnCrystal />
        <Disclosure summary="Transistor and coil">
          <Fields>
            <Entry of="carrier.standing" />
            <Entry of="carrier.ft" />
            <Entry of="carrier.ccb" />
            <Entry of="carrier.coilQ" />
          </Fields>
        </Disclosure>
      </Section>
      <Section
        title="Will it start?"
        margin={
          <Note>
            <p>
              Before it swings, the transistor must offer at least three times the resistance that
              crystal and coil take. More current or smaller C1 and C2 help.
            </p>
          </Note>
        }
      >
        <Figures>
          <Result of="carrier.startMargin" />
          <Result of="carrier.negativeResistance" />
          <Result of="carrier.resistance" />
          <Result of="carrier.reactance" />
          <Result of="carrier.gm" size="small" />
          <Result of="carrier.cpi" size="small" />
          <Result of="carrier.divider" size="small" />
          <Result of="carrier.hzPerStray" size="small" />
        </Figures>
      </Section>
    </SheetFrame>
  );
}
