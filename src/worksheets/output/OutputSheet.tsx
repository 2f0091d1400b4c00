import type { Outcome } from '../../engine/fields/kinds.ts';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Harmonics } from './Harmonics.tsx';
import { Load } from './Load.tsx';
import { Network } from './Network.tsx';
import { Parts } from './Parts.tsx';

/** The network between collector and antenna, and what it leaves of the harmonics. */
export function OutputSheet() {
  return (
    <SheetFrame
      stage="output"
      lead={
        <>
          The final wants <Read of="transmit.collectorLoad" /> and this network shows it{' '}
          <Read of="output.inputResistance" />. Of the power <Read of="output.loss" /> stays in its
          parts; <Read of="output.pepAntenna" /> of the <Write of="plan.pep" /> wanted reach the
          antenna. Harmonic <Read of="output.worstOrder" /> has the least margin,{' '}
          <Read of="output.worstMargin" />.
        </>
      }
      main={<LeastMargin />}
    >
      <Harmonics />
      <Network />
      <Parts />
      <Load />
    </SheetFrame>
  );
}

/** The margin of the worst harmonic, with how that is to be taken. */
function LeastMargin() {
  const verdict = useValue<Outcome>('output.verdict');
  return (
    <Result
      of="output.worstMargin"
      size="main"
      verdict={verdict === null ? undefined : { of: verdict }}
    />
  );
}
