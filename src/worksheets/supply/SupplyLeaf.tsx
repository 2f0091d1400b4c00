import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Battery } from './Battery.tsx';
import { Draws } from './Draws.tsx';
import { FuseAndLeads } from './FuseAndLeads.tsx';

/** What the rig draws, how long a battery lasts, and what stands between the two. */
export function SupplyLeaf() {
  return (
    <SheetFrame
      stage="supply"
      main={<Result of="supply.hours" size="main" />}
      lead={
        <>
          Listening draws <Read of="supply.listening" or="a current still open" />, a steady tone{' '}
          <Read of="supply.tone" or="a current still open" />. With <Write of="supply.talking" /> of
          the time on transmit a battery of <Write of="supply.capacity" /> lasts{' '}
          <Read of="supply.hours" or="a time still open" />.
        </>
      }
    >
      <Draws />
      <Battery />
      <FuseAndLeads />
    </SheetFrame>
  );
}
