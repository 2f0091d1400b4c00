import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { Amplifiers } from './Amplifiers.tsx';
import { Modulator } from './Modulator.tsx';
import { OperatingPoints } from './OperatingPoints.tsx';
import { OwnTransistor } from './OwnTransistor.tsx';
import { Speech } from './Speech.tsx';

/** The small stages, in the order of the signal. */
export function AmplifiersLeaf() {
  return (
    <SheetFrame
      stage="amplifiers"
      lead={
        <>
          The microphone amplifier lifts the voice by <Read of="transmit.micStageGain" />, the two
          amplifiers beside the filter by <Read of="transmit.amplifierGain" /> each and the driver
          by <Read of="transmit.driverGain" />.
        </>
      }
      main={<Result of="transmit.amplifierGain" size="main" />}
    >
      <Speech />
      <Modulator />
      <Amplifiers />
      <OperatingPoints />
      <OwnTransistor />
    </SheetFrame>
  );
}
