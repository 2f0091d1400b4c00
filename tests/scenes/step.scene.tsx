import { Step } from '../../src/design/Step.tsx';

const formula =
  '<math display="block"><mrow><msub><mi>C</mi><mi mathvariant="normal">s</mi></msub><mo>=</mo><mfrac><mn>1</mn><mrow><msup><mi>ω</mi><mn>2</mn></msup><msub><mi>L</mi><mi mathvariant="normal">m</mi></msub><mo>−</mo><mfrac><mn>1</mn><msub><mi>C</mi><mi mathvariant="normal">m</mi></msub></mfrac></mrow></mfrac><mo>−</mo><msqrt><mrow><msub><mi>C</mi><mn>0</mn></msub><msub><mi>C</mi><mi mathvariant="normal">L</mi></msub></mrow></msqrt></mrow></math>';
const numbers =
  '<math display="block"><mrow><mo>=</mo><mfrac><mn>1</mn><mrow><msup><mrow><mo>(</mo><mn>44.99</mn><mtext> Mrad/s</mtext><mo>)</mo></mrow><mn>2</mn></msup><mo>·</mo><mn>30.0</mn><mtext> mH</mtext><mo>−</mo><mfrac><mn>1</mn><mrow><mn>16.3</mn><mtext> fF</mtext></mrow></mfrac></mrow></mfrac><mo>−</mo><msqrt><mrow><mn>4.0</mn><mtext> pF</mtext><mo>·</mo><mn>82</mn><mtext> pF</mtext></mrow></msqrt></mrow></math>';

export const name = 'Step';
export const scene = () => (
  <Step
    label="Series capacitor"
    says="The crystal and the capacitor in series must have no reactance left at the wanted frequency."
    formula={formula}
    numbers={numbers}
    value="39.2 pF"
    where={[
      {
        symbol: 'omega',
        says: 'carrier frequency',
        value: '44.99 Mrad/s',
        href: '#carrier.frequency',
      },
      { symbol: 'L_m', says: 'motional inductance', value: '30.0 mH', href: '#quartz.lm' },
      { symbol: 'C_m', says: 'motional capacitance', value: '16.3 fF', href: '#quartz.cm' },
      { symbol: 'C_0', says: 'holder capacitance, a typical value', value: '4.0 pF' },
    ]}
    source="Closed form: series resonance of the equivalent circuit"
    assumes="The oscillator’s own capacitance is what it was measured to be."
    residual="Put back into the equation, 0.02 Ω is left."
  />
);
