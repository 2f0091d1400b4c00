import { memo } from 'react';
import { Button } from '../../design/Button.tsx';
import { Fields } from '../../design/Fields.tsx';
import { formatTrimmed } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Entry } from '../bound/Entry.tsx';

const limits = [
  'yield.widthLeast',
  'yield.widthMost',
  'yield.rippleMost',
  'yield.lossMost',
  'yield.carrierLeast',
  'yield.oppositeLeast',
] as const;

/** What a finished filter is held against; and a start for who has no figures of his own. */
export const MaskEntries = memo(function MaskEntries() {
  const blank = useBench((s) => limits.every((path) => !(path in s.rig.entries)));
  const least = useValue<number>('yield.usualLeast');
  const most = useValue<number>('yield.usualMost');
  const sayAll = useBench((s) => s.sayAll);
  const take = () => {
    if (least === null || most === null) return;
    sayAll(
      {
        'yield.widthLeast': formatTrimmed(least, 'Hz', 4),
        'yield.widthMost': formatTrimmed(most, 'Hz', 4),
        'yield.rippleMost': '1',
      },
      'Usual mask',
    );
  };
  return (
    <>
      <Fields>
        <Entry of="yield.widthLeast" />
        <Entry of="yield.widthMost" />
        <Entry of="yield.rippleMost" />
        <Entry of="yield.lossMost" />
        <Entry of="yield.carrierLeast" />
        <Entry of="yield.oppositeLeast" />
      </Fields>
      {blank && least !== null && (
        <p>
          Nothing is asked yet.{' '}
          <Button kind="strong" onPress={take}>
            Take the width to a twentieth, and a decibel of ripple
          </Button>
        </p>
      )}
    </>
  );
});
