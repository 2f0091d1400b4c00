import { Fields } from '../../design/Fields.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';

/** Multiples of the two oscillators: what is sent, what is heard, and what would avoid them. */
export function ProductsLeaf() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <SheetFrame
      stage="products"
      main={converts ? <Result of="convert.oscillator" size="main" /> : undefined}
      lead={
        converts ? (
          <>
            With this oscillator the band-pass lets through{' '}
            <Read of="products.lowestSent" or="what is still unknown" />, and the receiver hears{' '}
            <Read of="products.lowestHeard" or="what is still unknown" />.
          </>
        ) : (
          <>
            A rig without conversion has one oscillator and its harmonics only: nothing falls on the
            signal.
          </>
        )
      }
    >
      {converts && <Tables />}
    </SheetFrame>
  );
}

function Tables() {
  return (
    <>
      <Section
        title="Sent beside the signal"
        margin={
          <Note title="Near the signal nothing helps">
            <p>
              What falls inside the band-pass goes out with the voice. Only other frequencies, or
              less signal into the mixer, get rid of it.
            </p>
          </Note>
        }
      >
        <Say of="products.lowestSent" />
        <Rows
          of="products.sent"
          caption="Strongest first"
          columns={['name', 'order', 'frequency', 'beside', 'before', 'left', 'outcome']}
        />
      </Section>
      <Section
        title="Heard without an antenna"
        margin={
          <Note title="A whistle that runs">
            <p>
              A whistle whose pitch runs faster than the dial is a product of high multiples. Pull
              carrier and oscillator together and it moves; the signal doesn’t.
            </p>
          </Note>
        }
      >
        <Say of="products.lowestHeard" />
        <Rows of="products.heard" caption="Low orders first" />
        <Fields>
          <Entry of="products.window" />
          <Entry of="products.most" />
          <Entry of="convert.span" />
        </Fields>
      </Section>
      <Section
        title="Other crystals, other side"
        margin={
          <Note title="Before you buy">
            <p>
              The same operating frequency with other cheap crystals. High orders are weak; an image
              far away needs less of a band-pass; a low oscillator drifts less.
            </p>
          </Note>
        }
      >
        <Rows of="products.choices" caption="Best first; a dash: none found" />
      </Section>
    </>
  );
}
