import { Fields } from '../../design/Fields.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Rows } from '../bound/Rows.tsx';

/** The user's own limits: a single figure, and lines that go before it. */
export function OwnRules() {
  const rows = useValue<readonly { readonly from: number | null }[]>('plan.ownRows');
  const understood = rows?.filter(({ from }) => from !== null).length ?? 0;
  const echo =
    rows === null ? undefined : `${understood} of ${rows.length} lines understood; see below.`;
  return (
    <>
      <Fields>
        <Entry of="plan.ownLimit" />
      </Fields>
      <Pasted
        of="plan.ownRules"
        lines={4}
        example={'1.7 – 35 MHz: 40 dB or −36 dBm\nabove 35 MHz: 60 dB or −36 dBm'}
        echo={echo}
      />
      <Rows
        of="plan.ownRows"
        narrow="stack"
        columns={['line', 'from', 'to', 'below', 'absolute', 'whichever', 'note']}
      />
    </>
  );
}
