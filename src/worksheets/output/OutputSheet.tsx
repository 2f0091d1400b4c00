import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
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
          parts, <Read of="output.pepAntenna" /> reaches the antenna, and harmonic{' '}
          <Read of="output.worstOrder" /> has the least margin, <Read of="output.worstMargin" />.
        </>
      }
    >
      <Harmonics />
      <Network />
      <Parts />
      <Load />
    </SheetFrame>
  );
}
