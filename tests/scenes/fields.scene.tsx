import { useState } from 'react';
import { Choice } from '../../src/design/Choice.tsx';
import { Count } from '../../src/design/Count.tsx';
import { Field } from '../../src/design/Field.tsx';
import { Fields } from '../../src/design/Fields.tsx';

function Live() {
  const [inductance, setInductance] = useState('30m');
  const [holder, setHolder] = useState('');
  const [bandwidth, setBandwidth] = useState('24o0');
  const [wide, setWide] = useState('3k');
  const [poles, setPoles] = useState('6');
  const [side, setSide] = useState('lower');
  const [family, setFamily] = useState('chebyshev');
  return (
    <Fields title="What is known">
      <Field
        id="quartz.lm"
        label="Motional inductance"
        symbol="L_m"
        unit="H"
        text={inductance}
        echo="30.0 mH"
        typical="32 mH"
        onText={setInductance}
        onTypical={() => setInductance('')}
        onStep={() => undefined}
        prefixes={['µ', 'm']}
        help={<p>Sets, with the capacitors, how wide the filter can be.</p>}
        source="common practice, no source"
      />
      <Field
        id="quartz.c0"
        label="Holder capacitance"
        symbol="C_0"
        unit="F"
        text={holder}
        echo={undefined}
        typical="4.0 pF"
        onText={setHolder}
        prefixes={['p', 'n']}
      />
      <Field
        id="filter.bandwidth"
        label="Bandwidth"
        symbol="B"
        unit="Hz"
        text={bandwidth}
        onText={setBandwidth}
        problem={{
          says: '“24o0” cannot be read as a frequency.',
          try: 'a figure such as 2400, 2k4 or 2.4 kHz.',
        }}
      />
      <Field
        id="filter.wide"
        label="Bandwidth wanted"
        symbol="B"
        unit="Hz"
        text={wide}
        echo="3.00 kHz"
        onText={setWide}
        problem={{
          weight: 'warns',
          says: 'These crystals reach 2.27 kHz at most.',
          try: 'crystals with less C0 or higher frequency.',
        }}
      />
      <Field
        id="bench.carrier"
        label="Carrier as read"
        symbol="f_c"
        unit="Hz"
        text="7160.12k"
        echo="7.16012 MHz"
        origin="measured"
        onText={() => undefined}
      />
      <Count
        id="filter.crystals"
        label="Crystals"
        symbol="n"
        text={poles}
        onText={setPoles}
        onStep={(direction) => setPoles(String(Number(poles) + direction))}
        atMost={poles === '12'}
        atLeast={poles === '2'}
      />
      <Choice
        id="plan.sideband"
        label="Sideband"
        options={[
          ['lower', 'LSB'],
          ['upper', 'USB'],
        ]}
        value={side}
        onChoose={setSide}
      />
      <Choice
        id="filter.family"
        label="Family"
        form="list"
        options={[
          ['butterworth', 'Butterworth'],
          ['chebyshev', 'Chebyshev 0.1 dB'],
          ['equal', 'Equal capacitors'],
        ]}
        value={family}
        onChoose={setFamily}
      />
    </Fields>
  );
}

export const name = 'Fields';
export const scene = () => <Live />;
