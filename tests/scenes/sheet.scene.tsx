import { useState } from 'react';
import { Blank } from '../../src/design/Blank.tsx';
import { Button } from '../../src/design/Button.tsx';
import { Choice } from '../../src/design/Choice.tsx';
import { Count } from '../../src/design/Count.tsx';
import { Drawing } from '../../src/design/drawing/Drawing.tsx';
import { Field } from '../../src/design/Field.tsx';
import { Fields } from '../../src/design/Fields.tsx';
import { Figure } from '../../src/design/Figure.tsx';
import { Moved } from '../../src/design/Moved.tsx';
import { Note } from '../../src/design/Note.tsx';
import { Page } from '../../src/design/Page.tsx';
import { Section } from '../../src/design/Section.tsx';
import { Sentence } from '../../src/design/Sentence.tsx';
import { Sheet } from '../../src/design/Sheet.tsx';
import { Told } from '../../src/design/Told.tsx';
import { response, strip } from './charts.scene.tsx';
import { blocks } from './drawing.scene.tsx';
import { scene as figures } from './figures.scene.tsx';
import { scene as step } from './step.scene.tsx';
import { scene as table } from './table.scene.tsx';

function WholePage() {
  const [current, setCurrent] = useState('filter');
  const [bandwidth, setBandwidth] = useState('2400');
  const nothing = () => undefined;
  const title = blocks.find((block) => block.key === current)?.label ?? '';
  return (
    <Page
      title="Forty-metre demo rig"
      here={title}
      undo={
        <>
          <Button onPress={nothing}>Undo bandwidth</Button>
          <Button onPress={nothing} disabled>
            Redo
          </Button>
        </>
      }
      actions={
        <>
          <Button onPress={nothing}>Rigs</Button>
          <Button onPress={nothing}>Projector</Button>
          <Button onPress={nothing}>Print</Button>
        </>
      }
      nav={<Drawing blocks={blocks} current={current} onChoose={setCurrent} />}
      foot={<p>Saved on this computer a moment ago.</p>}
    >
      <Sheet
        title={title}
        asks="How wide, and at what loss?"
        lead={
          <Sentence>
            A filter{' '}
            <Blank
              id="lead.b"
              label="Bandwidth"
              unit="Hz"
              text={bandwidth}
              onText={setBandwidth}
              echo="2.40 kHz"
            />{' '}
            wide from <Blank id="lead.n" label="Crystals" text="" typical="6" onText={nothing} />{' '}
            crystals loses <Told of="1.8 dB" was="1.7 dB" /> and wants <Told of="196 Ω" /> at both
            ends.
          </Sentence>
        }
        main={
          <Figure
            size="main"
            label="Width at −6 dB"
            symbol="B_6"
            value="2.40 kHz"
            was="2.51 kHz"
            verdict={{ of: 'holds', says: 'within 4 Hz of the wish' }}
            onHow={nothing}
          />
        }
        moved={
          <Moved
            cause="Bandwidth 2.50 → 2.40 kHz"
            items={[
              { key: 'a', label: 'Insertion loss', was: '1.7 dB', now: '1.8 dB', href: '#f' },
              { key: 'b', label: 'End resistance', was: '205 Ω', now: '196 Ω', href: '#f' },
              { key: 'c', label: 'Carrier', was: '7.16015', now: '7.16012 MHz', href: '#c' },
              { key: 'd', label: 'Series capacitor', was: '38.1 pF', now: '39.2 pF', href: '#c' },
              { key: 'e', label: 'Signal to noise', was: '20.8 dB', now: '21.0 dB', href: '#p' },
            ]}
          />
        }
        foot={
          <>
            <a href="#quartz">Back to Quartz</a>
            <a href="#carrier">On to Carrier</a>
          </>
        }
      >
        <Section
          margin={
            <Note title="Why the loss grows">
              <p>A narrower filter keeps each crystal ringing longer, so more is lost in it.</p>
            </Note>
          }
        >
          {response}
          {strip}
        </Section>
        <Section title="What comes out">{figures()}</Section>
        <Section title="What goes in">
          <Fields>
            <Field
              id="page.b"
              label="Bandwidth"
              symbol="B"
              unit="Hz"
              text={bandwidth}
              echo="2.40 kHz"
              onText={setBandwidth}
              typical="2.40 kHz"
              onTypical={nothing}
              help={<p>At −6 dB.</p>}
            />
            <Field
              id="page.c0"
              label="Stray across each crystal"
              symbol="C_x"
              unit="F"
              text=""
              typical="0.5 pF"
              onText={nothing}
            />
            <Count
              id="page.n"
              label="Crystals"
              symbol="n"
              text="6"
              onText={nothing}
              onStep={nothing}
            />
            <Choice
              id="page.f"
              label="Family"
              options={[
                ['b', 'Butterworth'],
                ['c', 'Chebyshev'],
                ['e', 'Equal capacitors'],
              ]}
              value="c"
              onChoose={nothing}
            />
          </Fields>
          {table()}
        </Section>
        <Section title="Workings">{step()}</Section>
      </Sheet>
    </Page>
  );
}

export const name = 'Sheet';
export const scene = () => <WholePage />;
