import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { Analyser } from './Analyser.tsx';
import { Drag } from './Drag.tsx';
import { EndsPicture } from './EndsPicture.tsx';
import { Places } from './Places.tsx';
import { Side } from './Side.tsx';

/** What the filter sees at both ends, what that does to it, and how to put it right. */
export function EndsLeaf() {
  const verdict = useValue<'holds' | 'close' | 'fails'>('ends.verdict');
  return (
    <SheetFrame
      stage="ends"
      main={
        <Result
          of="ends.realRipple"
          size="main"
          label="Ripple between real ends"
          verdict={verdict === null ? undefined : { of: verdict }}
        />
      }
      lead={
        <>
          The filter wants <Read of="filter.ends" /> at its input and <Read of="filter.endsLoad" />{' '}
          at its output, and sees <Read of="ends.sourceSeen" /> and <Read of="ends.loadSeen" />: a
          ripple of <Read of="ends.realRipple" /> where <Read of="ends.rightRipple" /> was to be
          had.
        </>
      }
    >
      <Section
        title="Drag the ends"
        margin={
          <>
            <Note title="Low or high?">
              <p>
                Too low: as many humps as crystals, wider and steeper than it should be. Too high:
                humps too, but narrower. Half or double costs 2 dB, a quarter or four times 5 dB.
              </p>
            </Note>
            <Note title="On the bench">
              <p>
                Two potentiometers in place of the ends, turned up from 50 Ω until the ripple goes,
                and read with an ohmmeter, find R without any sum.
              </p>
            </Note>
          </>
        }
      >
        <Drag />
        <EndsPicture of="dragged" />
        <Places />
      </Section>
      <Section
        title="Before the filter"
        margin={
          <Note title="Which way?">
            <p>
              A transformer is broad and loses next to nothing. An L match needs one coil and one
              capacitor, and is good at one frequency: enough here. Resistors cost level, but what
              is left is resistive whatever the amplifier does.
            </p>
          </Note>
        }
      >
        <Side of="source" />
      </Section>
      <Section
        title="Behind the filter"
        margin={
          <Note title="Level or noise?">
            <p>
              Decibels lost before the filter on receive count as noise figure, divided by the gain
              before them; behind the first amplifier they hardly do. On transmit they only want
              more gain.
            </p>
          </Note>
        }
      >
        <Side of="load" />
      </Section>
      <Section
        title="What it costs"
        margin={
          <Note>
            <p>
              What looks like loss in a filter is often the ends: 17 dB have been measured where 6
              were mismatch.
            </p>
          </Note>
        }
      >
        <EndsPicture of="real" />
        <Figures>
          <Result of="ends.verdict" />
          <Result of="ends.rippleCost" />
          <Result of="ends.lossCost" />
          <Result of="ends.wholeLoss" />
          <Result of="ends.sourceLoss" />
          <Result of="ends.loadLoss" />
        </Figures>
      </Section>
      <Section
        title="With an analyser of other ports"
        margin={
          <Note title="Resistors, R less 50">
            <p>
              In series at both ends they show the filter what it wants, at the price of range: 100
              Ω 6 dB, 200 Ω 12, 500 Ω 20, 1 kΩ 26, 2 kΩ 32. Short leads: a picofarad across a large
              resistor is felt.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="ends.port" />
          <Entry of="ends.range" />
        </Fields>
        <Analyser />
      </Section>
    </SheetFrame>
  );
}
