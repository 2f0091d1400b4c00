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
import { SinkPicture } from './SinkPicture.tsx';

/** Heat, the heat sink, and every limit of the transistors. */
export function Heat() {
  const onSink = useValue<string>('transmit.cooling') === 'sink';
  return (
    <Section
      title="Heat and limits"
      margin={
        <Note title="Speech is gentle, a whistle isn’t">
          <p>
            Most of the time a voice is far below its crest. A steady tone somewhat below full power
            heats most: plan for it if you test or tune with the key down.
          </p>
        </Note>
      }
    >
      <Entry of="transmit.cooling" form="row" />
      <Fields>
        {onSink && <Entry of="transmit.sink" />}
        {onSink && <Entry of="transmit.contact" />}
        <Entry of="transmit.junctionAllowed" />
        <Entry of="transmit.speechMean" />
      </Fields>
      <SinkPicture />
      <Say of="transmit.sinkAdvice" />
      <Say of="transmit.sinkKind" />
      <Figures>
        <Result of="transmit.junction" />
        <Result of="transmit.junctionTone" />
        <Result of="transmit.sinkSpeech" />
        <Result of="transmit.sinkTone" />
        <Result of="transmit.dissipation" />
        <Result of="transmit.dissipationEach" />
        <Result of="transmit.dissipationTone" />
        <Result of="transmit.dissipationTwoTone" />
        <Result of="transmit.dissipationSpeech" />
      </Figures>
      <Rows of="transmit.limits" columns={['what', 'stands', 'used', 'outcome']} />
      <Disclosure summary="What the transistor’s sheet says">
        <Figures>
          <Result of="transmit.limitVce" size="small" />
          <Result of="transmit.limitIc" size="small" />
          <Result of="transmit.limitJunction" size="small" />
          <Result of="transmit.transition" size="small" />
          <Result of="transmit.toCase" size="small" />
          <Result of="transmit.toAmbient" size="small" />
        </Figures>
        <Fields title="Where yours says otherwise">
          <Entry of="transmit.ownVce" />
          <Entry of="transmit.ownIc" />
          <Entry of="transmit.ownFt" />
          <Entry of="transmit.ownToCase" />
          <Entry of="transmit.ownToAmbient" />
        </Fields>
      </Disclosure>
    </Section>
  );
}
