import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';

const fittedColumns = ['exact', 'nearest', 'parts', 'fitted', 'off'] as const;
const exactColumns = ['exact'] as const;

/** Which capacitors, what they are made of, and what not having the exact ones costs. */
export function PartsSection() {
  const fitted = useValue<string>('filter.fitted');
  const columns = fitted === 'exact' ? exactColumns : fittedColumns;
  return (
    <Section
      title="The parts"
      margin={
        <>
          <Note title="Why not the nearest of each?">
            <p>
              What one capacitor is off by, its neighbours can make up for. So all are chosen
              together, on the response that comes out; a value further off may then be the better
              one.
            </p>
          </Note>
          <Note title="Which capacitors?">
            <p>
              Scaling all coupling capacitors changes the width and hardly the ripple. Ripple comes
              from wrong ends or from meshes that are not in tune.
            </p>
          </Note>
          <Note title="Good ones">
            <p>NP0/C0G ceramic, silver mica or polystyrene. Other ceramics drift and lose.</p>
          </Note>
        </>
      }
    >
      <Entry of="filter.fitted" form="list" />
      {fitted === 'own' && (
        <Pasted of="filter.owned" lines={3} example={'100p 5, 82p x3, 47p\n2 x 33p'} />
      )}
      <Rows of="filter.couplings" columns={['junction', 'k', ...columns]} />
      <Rows of="filter.meshes" columns={['mesh', 'sum', ...columns]} />
      <Rows of="filter.stock" narrow="scroll" />
      <Rows of="filter.fits" />
      {fitted !== 'exact' && (
        <Figures>
          <Result of="filter.widthCost" />
          <Result of="filter.rippleCost" />
          <Result of="filter.lossCost" />
        </Figures>
      )}
      <Disclosure summary="Capacitor Q and stray">
        <Fields>
          <Entry of="filter.capacitorQ" />
          <Entry of="filter.stray" />
        </Fields>
      </Disclosure>
    </Section>
  );
}
