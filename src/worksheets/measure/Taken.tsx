import { Fields } from '../../design/Fields.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** What was read, in the way chosen. */
export function Taken({ method }: { method: string }) {
  if (method === 'fixture') return <InFixture />;
  if (method === 'shift') return <InOscillator />;
  return (
    <Fields>
      <Entry of="measure.series" measured />
      <Entry of="measure.parallel" measured />
    </Fields>
  );
}

function InFixture() {
  const own = useValue<string>('measure.jig') === 'own';
  return (
    <>
      <Entry of="measure.jig" form="row" />
      <Fields>
        {own && <Entry of="measure.jigOwn" />}
        <Entry of="measure.peak" measured />
        <Entry of="measure.peakLoss" measured />
        <Entry of="measure.width" measured />
      </Fields>
    </>
  );
}

function InOscillator() {
  const through = useValue<string>('measure.firstWith') === 'series';
  const by = useValue<string>('measure.oscillatorBy');
  return (
    <>
      <Entry of="measure.firstWith" form="row" />
      <Fields>
        {through && <Entry of="measure.firstSeries" measured />}
        <Entry of="measure.first" measured />
        <Entry of="measure.secondSeries" measured />
        <Entry of="measure.second" measured />
      </Fields>
      <Entry of="measure.oscillatorBy" form="row" />
      <Fields>
        {by === 'typed' && <Entry of="measure.oscillatorOwn" measured />}
        {by === 'feedback' && (
          <>
            <Entry of="measure.feedbackUpper" />
            <Entry of="measure.feedbackLower" />
            <Entry of="measure.oscillatorStray" />
          </>
        )}
        {by === 'third' && (
          <>
            <Entry of="measure.across" measured />
            <Entry of="measure.third" measured />
          </>
        )}
      </Fields>
      <Result of="measure.oscillator" size="small" none="wants readings" />
    </>
  );
}
