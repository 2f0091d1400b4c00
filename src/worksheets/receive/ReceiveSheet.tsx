import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { Limit } from './Limit.tsx';
import { Noise } from './Noise.tsx';
import { Sets } from './Sets.tsx';

/** From the antenna to the speaker: who sets the limit, where the noise comes from, how loud it is. */
export function ReceiveSheet() {
  return (
    <SheetFrame
      stage="receive"
      main={<Sets />}
      lead={
        <>
          A receiver with a noise figure of <Read of="receive.noiseFigure" /> hears signals from{' '}
          <Read of="receive.weakest" /> up. The noise should rise by <Read of="receive.noiseRise" />{' '}
          when the antenna takes the place of a dummy load.
        </>
      }
    >
      <Limit />
      <Noise />
    </SheetFrame>
  );
}
