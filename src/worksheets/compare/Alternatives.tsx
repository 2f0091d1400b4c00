import { Fields } from '../../design/Fields.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';

/** The three places for alternatives, each with its fields once it is used. */
export function Alternatives() {
  return (
    <>
      <Entry of="compare.b" form="row" />
      <Asked use="compare.b" />
      <Entry of="compare.c" form="row" />
      <Asked use="compare.c" />
      <Entry of="compare.d" form="row" />
      <Asked use="compare.d" />
    </>
  );
}

const fieldsOf = {
  'compare.b': ['compare.bFamily', 'compare.bCrystals', 'compare.bBandwidth', 'compare.bRipple'],
  'compare.c': ['compare.cFamily', 'compare.cCrystals', 'compare.cBandwidth', 'compare.cRipple'],
  'compare.d': ['compare.dFamily', 'compare.dCrystals', 'compare.dBandwidth', 'compare.dRipple'],
} as const;

/** What an alternative should be; nothing while it is left out. */
function Asked({ use }: { use: keyof typeof fieldsOf }) {
  const used = useValue<string>(use) === 'yes';
  const [family, crystals, bandwidth, ripple] = fieldsOf[use];
  const own = useValue<string>(family);
  const present = useValue<string>('filter.family');
  if (!used) return null;
  const rippled = (own === 'same' ? present : own) === 'chebyshev';
  return (
    <>
      <Entry of={family} form="list" />
      <Fields>
        <Entry of={crystals} />
        <Entry of={bandwidth} />
        {rippled && <Entry of={ripple} />}
      </Fields>
    </>
  );
}
