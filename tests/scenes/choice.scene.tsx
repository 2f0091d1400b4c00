import { ChoiceChart } from '../../src/design/chart/ChoiceChart.tsx';
import { LocusChart } from '../../src/design/chart/LocusChart.tsx';

const angles = Array.from({ length: 73 }, (_, k) => (k * Math.PI) / 36);

export const name = 'Choice and locus';
export const scene = () => (
  <>
    <ChoiceChart
      title="Parts against margin"
      summary="Those with a number pass; number 1 takes 7 parts."
      dots={[
        { key: 'a', x: 3, y: -12, kind: 'plain' },
        { key: 'b', x: 5, y: -3, kind: 'plain' },
        { key: 'c', x: 5, y: -4, kind: 'plain' },
        { key: 'd', x: 7, y: 8, kind: 'marked', text: '1' },
        { key: 'e', x: 7, y: 9, kind: 'placed', text: '2' },
        { key: 'f', x: 9, y: 29, kind: 'placed', text: '3' },
      ]}
      x={{ from: 0.5, to: 9.7, name: 'parts' }}
      y={{ from: -20, to: 35, name: 'least margin, dB' }}
      least={{ at: 3, label: 'margin wanted' }}
    />
    <LocusChart
      title="What the collector sees"
      summary="Resistance between 16 Ω and 60 Ω; 27 Ω are wanted."
      ring={{ x: angles.map((a) => 38 + 22 * Math.cos(a)), y: angles.map((a) => 22 * Math.sin(a)) }}
      marks={[
        { x: 60, y: 0, label: '0°', side: 'right' },
        { x: 16, y: 0, label: '180°', side: 'left' },
      ]}
      wanted={{ x: 27, y: 0, label: 'wanted' }}
      xName="resistance, Ω"
      yName="reactance, Ω"
    />
  </>
);
