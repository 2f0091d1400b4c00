import { TransformerDrawing } from '../../src/design/drawing/TransformerDrawing.tsx';
import { TwoHoleDrawing } from '../../src/design/drawing/TwoHoleDrawing.tsx';
import { WindingCard, WindingCards } from '../../src/design/drawing/WindingCard.tsx';

const core = { outer: 9.53, inner: 4.75, wire: 0.44 };

export const name = 'Transformers';
export const scene = () => (
  <WindingCards>
    <WindingCard
      title="Modulator"
      does="Gives both diodes the same carrier in opposite senses."
      build="Three wires twisted together, 8 turns."
      joins="The finish of B goes to the start of C: that is the centre tap."
      facts={[
        { label: 'Loss by the core', value: '0.60 dB' },
        { label: 'Good up to', value: '65 MHz' },
      ]}
      picture={
        <TransformerDrawing
          {...core}
          label="A core with 8 turns of three wires."
          turns={[8, 8, 8]}
          bundle
          joined={[1, 2]}
        />
      }
    />
    <WindingCard
      title="Driver to final"
      does="Turns volts into current."
      build="12 turns, then 2 turns over them."
      facts={[{ label: 'Loss by the core', value: '0.26 dB' }]}
      picture={<TransformerDrawing {...core} label="A core with 12 and 2 turns." turns={[12, 2]} />}
    />
    <WindingCard
      title="Output of a push-pull final"
      does="The supply comes in at its middle."
      build="Two wires twisted together, 5 turns; then 6 turns over them."
      facts={[]}
      picture={
        <TransformerDrawing
          {...core}
          label="A core with twice 5 turns and 6 over them."
          turns={[5, 5]}
          bundle
          over={6}
          joined={[0, 1]}
        />
      }
    />
    <WindingCard
      title="Driver of a push-pull final"
      does="The bias comes in at the middle of its second winding."
      build="12 turns, then two wires over them, 2 turns each."
      facts={[]}
      picture={
        <TransformerDrawing
          {...core}
          label="A core with 12 turns and twice 2 between them."
          turns={[12, 2]}
          paired
          joined={[1, 2]}
        />
      }
    />
    <WindingCard
      title="First amplifier to filter"
      does="A steep step."
      build="3 turns, then 18 turns over them, through both holes."
      facts={[{ label: 'Loss by the core', value: '0.47 dB' }]}
      picture={<TwoHoleDrawing label="A two-hole core with 3 and 18 turns." turns={[3, 18]} />}
    />
  </WindingCards>
);
