import { NetworkDrawing } from '../../src/design/drawing/NetworkDrawing.tsx';
import { ToroidDrawing } from '../../src/design/drawing/ToroidDrawing.tsx';
import { WindingPlan } from '../../src/design/drawing/WindingPlan.tsx';

const core = { outer: 12.7, inner: 7.7, wire: 0.54 };

export const plan = (
  <WindingPlan
    windings={[
      {
        key: 'coil',
        title: 'L1 and L3, alike',
        build: '16 turns of 0.5 mm wire, spread over the core but for a gap.',
        more: 'Makes 1.25 µH where 1.29 µH is wanted.',
        picture: <ToroidDrawing {...core} label="A core with 16 turns." turns={[16]} />,
      },
      {
        key: 'two',
        title: 'Driver to final',
        build: '12 turns, then 2 turns over them.',
        picture: <ToroidDrawing {...core} label="A core with 12 and 2 turns." turns={[12, 2]} />,
      },
      {
        key: 'three',
        title: 'Modulator',
        build: 'Three wires together, 8 turns.',
        picture: (
          <ToroidDrawing {...core} label="A core with 8 turns of 3." turns={[8, 8, 8]} bundle />
        ),
      },
      {
        key: 'one',
        title: 'A wire pushed through',
        build: 'One turn.',
        picture: <ToroidDrawing {...core} label="A core with one turn." turns={[1]} />,
      },
    ]}
  />
);

export const network = (
  <NetworkDrawing
    label="A network"
    parts={[
      { key: 'c', label: 'Collector', value: 'sees 27 Ω', kind: 'start' },
      { key: 't', label: 'Turns', value: '3 : 4', kind: 'transformer' },
      { key: 'c1', label: 'C1', value: '360 pF', kind: 'shuntCapacitor' },
      { key: 'l1', label: 'L1', value: '1.32 µH', kind: 'coil' },
      { key: 'a', label: 'Antenna', value: '50 Ω', kind: 'end' },
    ]}
  />
);

export const name = 'Windings';
export const scene = () => (
  <>
    {network}
    {plan}
  </>
);
