import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { FamilyNote } from './FamilyNote.tsx';

/** What is asked for: width, crystals, family, and where the crystals stand. */
export function ShapeSection() {
  const family = useValue<string>('filter.family');
  const toGround = useValue<string>('filter.form') === 'shunt';
  return (
    <Section
      title="What it should be"
      margin={
        <>
          <FamilyNote family={family} />
          <Note title={toGround ? 'Crystals to ground' : 'Crystals in series'}>
            {toGround ? (
              <p>
                Each shorts the signal at its series resonance, below the passband: the lower skirt
                is the steep one, where upper sideband has its carrier. Far away on both sides only
                a chain of capacitors is left, which stops less than crystals in series do.
              </p>
            ) : (
              <p>
                Each stops the signal at its parallel resonance, above the passband: the upper skirt
                is the steep one, where lower sideband has its carrier. For upper sideband put them
                to ground.
              </p>
            )}
          </Note>
          <Note title="Each crystal has a greatest bandwidth">
            <p>
              The nearer the passband comes to the parallel resonance, the less width a step of
              reactance buys. Beyond the greatest width no capacitors help; less holder capacitance,
              fewer poles or another frequency do.
            </p>
          </Note>
        </>
      }
    >
      <Fields>
        <Entry of="filter.bandwidth" />
        <Entry of="filter.crystals" />
        {family === 'chebyshev' && <Entry of="filter.ripple" />}
      </Fields>
      <Entry of="filter.family" form="list" />
      <Entry of="filter.form" form="row" />
      {toGround && (
        <Fields>
          <Entry of="filter.across" />
        </Fields>
      )}
      <Figures>
        <Result of="filter.reach" />
        <Result of="filter.loss" />
        <Result of="filter.rippleFound" />
        <Result of="filter.farOff" />
        {family === 'doubled' && <Result of="filter.crystalsNeeded" />}
        {toGround && <Result of="filter.acrossFitted" />}
      </Figures>
    </Section>
  );
}
