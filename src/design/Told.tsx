import { joined } from './joined.ts';
import { Value } from './Value.tsx';
import { words } from './words.ts';

/** A worked figure inside a sentence. */
export function Told({ of, was }: { of: string; was?: string | undefined }) {
  return (
    <strong className={joined('told', was !== undefined && 'told--moved')}>
      <Value of={of} />
      {was !== undefined && (
        <span className="unseen">
          {' '}
          ({words.was} {was})
        </span>
      )}
    </strong>
  );
}
