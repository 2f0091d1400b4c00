import { AirCoilDrawing } from '../../src/design/drawing/AirCoilDrawing.tsx';
import { NetworkDrawing } from '../../src/design/drawing/NetworkDrawing.tsx';
import { ToroidDrawing } from '../../src/design/drawing/ToroidDrawing.tsx';
import { WaysToStand } from '../../src/design/drawing/WaysToStand.tsx';
import { WindingCard, WindingCards } from '../../src/design/drawing/WindingCard.tsx';

const core = { outer: 12.7, inner: 7.7, wire: 0.54 };

const toroid = (label: string, turns: readonly number[], more: object = {}) => (
  <ToroidDrawing {...core} label={label} turns={turns} {...more} />
);

export const plan = (
  <WindingCards>
    <WindingCard
      title="L1 and L3, alike"
      does="1.29 µH wanted."
      build="16 turns of 0.5 mm wire, spread over three quarters of the core."
      facts={[
        { label: 'Spread out', value: '1.25 µH' },
        { label: 'Q, estimated', value: '190' },
      ]}
      picture={toroid('A core with 16 turns, numbered.', [16], { share: 0.75, told: true })}
    />
    <WindingCard
      title="Driver to final"
      does="Two windings."
      build="12 turns, then 2 turns over them."
      facts={[]}
      picture={toroid('A core with 12 and 2 turns.', [12, 2])}
    />
    <WindingCard
      title="Modulator"
      does="A bundle."
      build="Three wires together, 8 turns."
      facts={[]}
      picture={toroid('A core with 8 turns of 3.', [8, 8, 8], { bundle: true })}
    />
    <WindingCard
      title="A wire pushed through"
      does="The least there is."
      build="One turn."
      facts={[]}
      picture={toroid('A core with one turn.', [1], { told: true })}
    />
  </WindingCards>
);

export const spread = (
  <WaysToStand
    items={[0.917, 0.5, 0.25].map((share) => ({
      key: String(share),
      title: `over ${share}`,
      figure: '1.25 µH',
      more: '10 turns',
      picture: toroid(`10 turns over ${share} of a core.`, [10], { share, numbered: false }),
    }))}
  />
);

export const air = (
  <AirCoilDrawing
    label="7.4 turns over 12 mm on a former of 8 mm."
    former={8}
    wire={1}
    long={12}
    turns={7.4}
    longText="7.4 turns over 12 mm"
    formerText="8 mm"
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
    {spread}
    {air}
  </>
);
