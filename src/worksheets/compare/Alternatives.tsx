import { Button } from '../../design/Button.tsx';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';
import './compare.css';

const fieldsOf = {
  'compare.b': [
    'compare.bFamily',
    'compare.bForm',
    'compare.bCrystals',
    'compare.bBandwidth',
    'compare.bRipple',
  ],
  'compare.c': [
    'compare.cFamily',
    'compare.cForm',
    'compare.cCrystals',
    'compare.cBandwidth',
    'compare.cRipple',
  ],
  'compare.d': [
    'compare.dFamily',
    'compare.dForm',
    'compare.dCrystals',
    'compare.dBandwidth',
    'compare.dRipple',
  ],
} as const;

/** The three places for alternatives, side by side, each with its fields once it is used. */
export function Alternatives() {
  return (
    <>
      <Beginning />
      <div className="alternatives">
        <Alternative use="compare.b" />
        <Alternative use="compare.c" />
        <Alternative use="compare.d" />
      </div>
    </>
  );
}

/** What an alternative should be; only whether it is wanted while it is left out. */
function Alternative({ use }: { use: keyof typeof fieldsOf }) {
  const used = useValue<string>(use) === 'yes';
  const [family, form, crystals, bandwidth, ripple] = fieldsOf[use];
  const own = useValue<string>(family);
  const present = useValue<string>('filter.family');
  const rippled = (own === 'same' ? present : own) === 'chebyshev';
  return (
    <div className="alternatives__one">
      <Entry of={use} form="row" />
      {used && (
        <>
          <Entry of={family} form="list" />
          <Entry of={form} form="list" />
          <Entry of={crystals} />
          <Entry of={bandwidth} />
          {rippled && <Entry of={ripple} />}
        </>
      )}
    </div>
  );
}

/** Something to begin with, for who has nothing in mind. */
function Beginning() {
  const blank = useBench((s) => Object.keys(fieldsOf).every((path) => !(path in s.rig.entries)));
  const crystals = useValue<number>('filter.crystals');
  const sayAll = useBench((s) => s.sayAll);
  if (!blank) return null;
  const others = crystals === 8 ? '6' : '8';
  const begin = () =>
    sayAll(
      {
        'compare.b': 'yes',
        'compare.bFamily': 'butterworth',
        'compare.c': 'yes',
        'compare.cFamily': 'equal',
        'compare.d': 'yes',
        'compare.dCrystals': others,
      },
      'Three to compare',
    );
  return (
    <p>
      The rig itself is not changed by what is said here.{' '}
      <Button kind="strong" onPress={begin}>
        Set a flat one, one of equal capacitors and one of {others} crystals beside it
      </Button>
    </p>
  );
}
