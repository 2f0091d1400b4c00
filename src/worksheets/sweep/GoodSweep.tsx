import { Figures } from '../../design/Figures.tsx';
import { Result } from '../bound/Result.tsx';
import { Read } from '../bound/Write.tsx';

/** How to sweep the crystal at hand, step by step, with its own figures. */
export function GoodSweep() {
  return (
    <>
      <Figures>
        <Result of="sweep.width" none="wants a marking on the Plan" />
        <Result of="sweep.stepWanted" none="wants a marking on the Plan" />
        <Result of="sweep.bandwidthWanted" none="wants a marking on the Plan" />
      </Figures>
      <ol className="jig-steps">
        <li>
          Put a wire in place of the crystal; calibrate, or write down what it reads. Attenuators of
          6 dB and more on both sides make the resistances what they are said to be.
        </li>
        <li>
          Crystal in, can not grounded, at most 0 dBm. Bandwidth of the analyser{' '}
          <Read of="sweep.bandwidthWanted" /> or less: the ring time is <Read of="sweep.ring" />.
        </li>
        <li>
          Look for the peak first, in one wide sweep about the marking: it stands a little below.
        </li>
        <li>
          For Lm, Cm and Rm: from <Read of="sweep.peakFrom" /> to <Read of="sweep.peakTo" /> in
          steps of <Read of="sweep.stepWanted" /> or less.
        </li>
        <li>
          For C0 too: on to <Read of="sweep.dipTo" />, past the dip, <Read of="sweep.dipPoints" />{' '}
          points at that step. With fewer points take a second, coarser sweep there and paste it
          under the first.
        </li>
        <li>Save as .s2p or as columns, and open or paste it here.</li>
      </ol>
      <Figures>
        <Result of="sweep.ring" size="small" none="wants a marking" />
        <Result of="sweep.peakFrom" size="small" none="wants a marking" />
        <Result of="sweep.peakTo" size="small" none="wants a marking" />
        <Result of="sweep.dipTo" size="small" none="wants a marking" />
        <Result of="sweep.dipPoints" size="small" none="wants a marking" />
        <Result of="sweep.resistance" size="small" />
      </Figures>
    </>
  );
}
