import { Note } from '../../design/Note.tsx';

/** What it would mean if a reading were far from what is usual. */
export function IfOdd({ method }: { method: string }) {
  if (method === 'fixture') {
    return (
      <>
        <Note title="What to expect">
          <p>
            A 9 MHz crystal of 14 mH and 8 Ω is 375 Hz wide between 12.5 Ω, 1230 Hz between 50 Ω.
            Resistances of 5, 10 and 20 Ω cost 1.6, 2.9 and 5.1 dB in 12.5 Ω, but only 0.4, 0.8 and
            1.6 dB in 50 Ω.
          </p>
        </Note>
        <Note title="If it is not so">
          <p>
            Much wider: the sweep is too fast, or its steps too coarse. Lossier than its brothers: a
            tired crystal, or too much drive. A shoulder or second peak: a spurious mode, and the
            width says nothing.
          </p>
        </Note>
      </>
    );
  }
  if (method === 'shift') {
    return (
      <>
        <Note title="What to expect">
          <p>
            9 MHz crystals shift by 3.7 kHz through 22 pF and by 2.6 kHz through 33 pF with 110 pF
            in the oscillator. The first reading lies some 900 Hz above series resonance there.
          </p>
        </Note>
        <Note title="If it is not so">
          <p>
            Hardly any shift: the capacitor is bridged, or it is an overtone crystal. A frequency
            that wanders: it is warm, or the oscillator’s limiting changes its capacitance.
          </p>
        </Note>
      </>
    );
  }
  return (
    <>
      <Note title="What to expect">
        <p>
          The dip lies twenty to forty kilohertz above a 9 MHz peak. Half a picofarad left in C0
          makes Cm an eighth too large, one more than a fifth.
        </p>
      </Note>
      <Note title="If it is not so">
        <p>
          Much nearer: stray in the jig draws the dip down. Small peaks between the two: spurious
          modes, which are no matter here.
        </p>
      </Note>
    </>
  );
}
