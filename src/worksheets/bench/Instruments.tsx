import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** What is read with, and how far it may be off. */
export function Instruments() {
  return (
    <Section
      title="The instruments"
      margin={
        <Note title="Five per cent of volts are ten of watts">
          <p>
            Trim a ×10 probe on its square wave first. Where two instruments disagree, check the
            dummy load’s resistance before either.
          </p>
        </Note>
      }
    >
      <Entry of="bench.probe" form="row" />
      <Fields>
        <Entry of="bench.scopeBandwidth" />
        <Entry of="bench.scopeError" />
        <Entry of="bench.dummyLoad" />
        <Entry of="bench.meterError" />
        <Entry of="bench.counterError" />
        <Entry of="bench.analyserError" />
        <Entry of="bench.dynamicRange" />
      </Fields>
      <Figures>
        <Result of="bench.scopeShows" />
        <Result of="bench.scopeLoss" />
      </Figures>
      <Disclosure summary="The cautions, and where they come from">
        <Say of="bench.cautions" />
      </Disclosure>
    </Section>
  );
}
