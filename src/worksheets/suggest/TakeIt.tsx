import { Button } from '../../design/Button.tsx';
import type { Offered } from '../../engine/errands/suggest/suggestAnswer.ts';
import { valueAt } from '../../engine/rig/worked.ts';
import { workedOf } from '../../store/bench.ts';
import { useBench } from '../../store/store.ts';

/** The word that takes a network into the rig; or that it stands there already. */
export function TakeIt({ offered, strong = false }: { offered: Offered; strong?: boolean }) {
  const { entries, words } = offered;
  const taken = useBench((s) => {
    const worked = workedOf(s.rig);
    return Object.entries(entries).every(
      ([path, text]) => String(valueAt(worked, path) ?? '') === text,
    );
  });
  const sayAll = useBench((s) => s.sayAll);
  if (taken) {
    return strong ? (
      <>
        This is the network of the rig: <a href="#output">Network</a> has its parts.
      </>
    ) : (
      <span>taken</span>
    );
  }
  return (
    <Button
      kind={strong ? 'strong' : 'plain'}
      label={`Take: ${words}`}
      onPress={() => sayAll(entries, 'Network chosen')}
    >
      {strong ? 'Take this network' : 'take'}
    </Button>
  );
}
