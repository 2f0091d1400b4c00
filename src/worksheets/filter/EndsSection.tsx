import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { useUnlikeEnds } from './useUnlikeEnds.ts';

/** What the filter is fed from and works into. */
export function EndsSection() {
  const source = useValue<number>('filter.sourceReactance') ?? 0;
  const load = useValue<number>('filter.loadReactance') ?? 0;
  const unlike = useUnlikeEnds();
  return (
    <Section
      title="Ends"
      margin={
        <Note title="The commonest fault">
          <p>
            Half or double the right resistance costs some 2 dB of ripple. Straight into 50 Ω a
            filter of 200 Ω shows humps of 5 dB, and looks wider and steeper than it is.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="filter.ends" />
        {unlike && <Result of="filter.endsLoad" />}
        <Result of="filter.returnLoss" />
      </Figures>
      <Fields>
        <Entry of="filter.sourceResistance" />
        <Entry of="filter.sourceReactance" />
        <Entry of="filter.loadResistance" />
        <Entry of="filter.loadReactance" />
      </Fields>
      {source !== 0 && (
        <Figures>
          <Result of="filter.sourceParallelR" />
          {source < 0 ? (
            <Result of="filter.sourceParallelC" />
          ) : (
            <Result of="filter.sourceParallelL" />
          )}
        </Figures>
      )}
      {load !== 0 && (
        <Figures>
          <Result of="filter.loadParallelR" />
          {load < 0 ? <Result of="filter.loadParallelC" /> : <Result of="filter.loadParallelL" />}
        </Figures>
      )}
    </Section>
  );
}
