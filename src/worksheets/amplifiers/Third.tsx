import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** The amplifier behind the band-pass, which only a rig with conversion may have. */
export function Third() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  const there = useValue<string>('transmit.thirdAmplifier') === 'yes';
  if (!converts) return null;
  return (
    <Section
      title="Behind the band-pass"
      margin={
        <Note title="Mixer and band-pass are paid for">
          <p>
            Together they cost some ten decibels. One more amplifier of the same kind brings them
            back; it works at the operating frequency, the two beside the filter at the filter’s.
          </p>
        </Note>
      }
    >
      <Entry of="transmit.thirdAmplifier" form="row" />
      {there && (
        <Figures>
          <Result of="transmit.thirdGain" />
          <Result of="transmit.thirdClip" />
          <Result of="transmit.thirdInput" />
          <Result of="transmit.thirdOutput" />
        </Figures>
      )}
    </Section>
  );
}
