import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** How near to the antenna people may come. */
export function Exposure() {
  const advice = useValue<string>('path.exposureAdvice');
  return (
    <Section
      title="People near the antenna"
      margin={
        <Note title="A planning figure">
          <p>
            The distances are those of a far field from a point. Close to a wire only published
            near-field tables or a measurement count, and the rules in force decide.
          </p>
        </Note>
      }
    >
      {advice !== null && <Caution>{advice}</Caution>}
      <Fields>
        <Entry of="path.duty" />
      </Fields>
      <Figures>
        <Result of="path.keepAway" />
        <Result of="path.nearField" />
        <Result of="path.meanEirp" />
      </Figures>
      <Disclosure summary="Limits and distances, rule by rule">
        <Figures>
          <Result of="path.publicLimit" size="small" />
          <Result of="path.publicDistance" size="small" />
          <Result of="path.occupationalLimit" size="small" />
          <Result of="path.occupationalDistance" size="small" />
          <Result of="path.icnirpLimit" size="small" />
          <Result of="path.icnirpDistance" size="small" />
        </Figures>
        <Say of="path.exposureAdvice" label="How far to trust these" />
      </Disclosure>
    </Section>
  );
}
