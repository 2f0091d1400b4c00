import { Blank } from '../../src/design/Blank.tsx';
import { Button } from '../../src/design/Button.tsx';
import { Caution } from '../../src/design/Caution.tsx';
import { Disclosure } from '../../src/design/Disclosure.tsx';
import { Moved } from '../../src/design/Moved.tsx';
import { Note } from '../../src/design/Note.tsx';
import { Problem } from '../../src/design/Problem.tsx';
import { Sentence } from '../../src/design/Sentence.tsx';
import { Told } from '../../src/design/Told.tsx';

export const name = 'Words';
export const scene = () => (
  <>
    <Sentence>
      A filter{' '}
      <Blank
        id="w.b"
        label="Bandwidth"
        unit="Hz"
        text="2400"
        onText={() => undefined}
        echo="2.40 kHz"
      />{' '}
      wide from <Blank id="w.n" label="Crystals" text="" typical="6" onText={() => undefined} />{' '}
      crystals loses <Told of="1.8 dB" was="1.7 dB" /> and wants <Told of="196 Ω" /> at its ends.
    </Sentence>
    <Moved
      cause="Bandwidth 2.50 → 2.40 kHz"
      items={[
        { key: 'a', label: 'Insertion loss', was: '1.7 dB', now: '1.8 dB', href: '#filter' },
        { key: 'b', label: 'End resistance', was: '205 Ω', now: '196 Ω', href: '#filter' },
        { key: 'c', label: 'Carrier', was: '7.16015 MHz', now: '7.16012 MHz', href: '#carrier' },
        { key: 'd', label: 'Series capacitor', was: '38.1 pF', now: '39.2 pF', href: '#carrier' },
        { key: 'e', label: 'Other sideband, 300 Hz', was: '37.9 dB', now: '38.6 dB' },
        { key: 'f', label: 'Signal to noise', was: '20.8 dB', now: '21.0 dB', href: '#path' },
      ]}
      most={5}
    />
    <Problem
      says="The filter cannot be wider than 2.27 kHz with these crystals."
      try="fewer picofarads across the holder, or a higher crystal frequency."
      at={{ href: '#quartz.c0', label: 'Holder capacitance' }}
    />
    <Caution>
      The collector reaches 24 V and the heat sink 70 °C at full output. Let it cool before you
      touch it, and never key without a load.
    </Caution>
    <Note title="Two rules, one filter">
      <p>
        “20 dB down” and “300 Hz outside” name the same place only for about six crystals. Both are
        marked on the curve.
      </p>
    </Note>
    <p>
      <Button onPress={() => undefined}>Undo</Button>{' '}
      <Button onPress={() => undefined} disabled>
        Redo
      </Button>{' '}
      <Button kind="strong" onPress={() => undefined}>
        Start an empty rig
      </Button>
    </p>
    <Disclosure summary="What this model leaves out">
      <p>Spurious modes of the crystals and coupling across the filter.</p>
    </Disclosure>
  </>
);
