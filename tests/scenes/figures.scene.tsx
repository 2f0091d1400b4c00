import { Figure } from '../../src/design/Figure.tsx';
import { Figures } from '../../src/design/Figures.tsx';

export const name = 'Figures';
export const scene = () => (
  <Figures>
    <Figure label="Insertion loss" symbol="A" value="1.8 dB" onHow={() => undefined} howOpen />
    <Figure label="End resistance" symbol="R_e" value="196 Ω" was="205 Ω" onHow={() => undefined} />
    <Figure label="Passband" value="7.157 32 … 7.159 72 MHz" size="small" />
    <Figure
      label="Carrier suppression"
      value="48 dB"
      verdict={{ of: 'holds', says: '8 dB to spare' }}
      onHow={() => undefined}
    />
    <Figure
      label="Other sideband at 300 Hz"
      value="38.6 dB"
      verdict={{ of: 'close', says: '1.4 dB short of 40' }}
    />
    <Figure
      label="Second harmonic"
      value="−39 dBc"
      verdict={{ of: 'fails', says: '4 dB over the limit' }}
    />
    <Figure label="Coil Q" symbol="Q_u" value="180" origin="typical" />
    <Figure label="Output" symbol="P" value="1.9 W" origin="measured" size="small" />
    <Figure
      label="Audio passband"
      value={null}
      waits="waits for Carrier: series capacitor"
      verdict={{ of: 'waits' }}
    />
  </Figures>
);
