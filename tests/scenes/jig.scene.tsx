import { JigDrawing } from '../../src/design/drawing/JigDrawing.tsx';
import { Slider } from '../../src/design/Slider.tsx';

export const name = 'Jigs for one crystal, and a slider';

export const scene = () => (
  <main>
    <h1>Jigs</h1>
    <JigDrawing jig="pi" label="The crystal between two pi networks." />
    <JigDrawing jig="plain" end="50 Ω" label="The crystal between 50 Ω and 50 Ω." />
    <JigDrawing jig="shift" label="An oscillator, the crystal straight or through a capacitor." />
    <JigDrawing jig="third" label="The same with a capacitor across it." throughBoth />
    <Slider
      id="slide"
      label="Fed from"
      position={0.3}
      says="120 Ω"
      onMove={() => undefined}
      marks={[
        { at: 0, label: '⅛' },
        { at: 0.5, label: 'right' },
        { at: 1, label: '×8' },
      ]}
    />
  </main>
);
