import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figure } from '../../design/Figure.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { SuggestAnswer } from '../../engine/errands/suggest/suggestAnswer.ts';
import { useErrand } from '../../store/errands.ts';
import { Entry } from '../bound/Entry.tsx';
import { Errand } from '../bound/Errand.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { ChoicePicture } from './ChoicePicture.tsx';
import { OfferedTable } from './OfferedTable.tsx';
import { Suggestion } from './Suggestion.tsx';
import './suggest.css';
import { Unmet } from './Unmet.tsx';

/** Pause after the last change before the networks are sent for, ms. */
const PAUSE = 350;

/** The simplest network that keeps the rule, and its runners-up. */
export function SuggestLeaf() {
  const errand = useErrand<SuggestAnswer>('suggest', { auto: PAUSE });
  const { answer } = errand;
  const first = answer?.ranked[0];
  return (
    <SheetFrame
      stage="suggest"
      lead={
        <>
          Of <Read of="suggest.looked" /> networks, each built with real parts, this is the simplest
          that keeps the rule with <Write of="output.marginWanted" /> to spare, from no more than{' '}
          <Write of="suggest.mostParts" /> parts.
        </>
      }
      main={
        <Figure
          label="Parts of the one suggested"
          size="main"
          value={first ? String(first.parts) : null}
          waits={answer ? 'none passes' : 'not yet worked'}
        />
      }
    >
      <Section
        title="What it may be made of"
        margin={
          <Note title="What is a part?">
            <p>
              A capacitor, a coil or the transformer. A transformer costs a core and a few turns; a
              pi match makes the load with three parts and holds back harmonics as well.
            </p>
          </Note>
        }
      >
        <Entry of="suggest.prefer" form="row" />
        <Entry of="suggest.matchBy" form="list" />
        <Fields>
          <Entry of="suggest.mostParts" />
        </Fields>
        <Disclosure summary="Kinds of filter, and what is asked of them">
          <Entry of="suggest.halfWave" form="row" />
          <Entry of="suggest.prototypes" form="row" />
          <Entry of="suggest.traps" form="row" />
          <Entry of="suggest.elliptic" form="row" />
          <Fields>
            <Entry of="suggest.fitLeast" />
            <Entry of="suggest.lossMost" />
            <Entry of="suggest.powerLeast" />
          </Fields>
          <Rows of="suggest.kinds" />
          <Result of="suggest.looked" size="small" />
        </Disclosure>
      </Section>
      <Section
        title="The suggestion"
        margin={
          <Note title="Before you buy parts">
            <p>
              Harmonics come from the pulse worked by hand. <a href="#power">Final</a> works them
              from a transistor model: look at both, and leave some margin.
            </p>
          </Note>
        }
      >
        <Errand of={errand} what="Networks built and worked" run="Look through them" />
        {answer && (
          <>
            <Suggestion answer={answer} />
            <Unmet answer={answer} />
          </>
        )}
      </Section>
      {answer && (
        <Section
          title="What else would do"
          margin={
            <Note>
              <p>
                Of each kind only the best is shown. A ring in the picture is a network that fails
                in something, if only in the number of its parts.
              </p>
            </Note>
          }
        >
          <ChoicePicture answer={answer} />
          <OfferedTable caption="Those that pass, the simplest first" offered={answer.ranked} />
        </Section>
      )}
      <Section>
        <Caution>
          A planning figure. Rules differ by country and licence and change: read the text in force,
          measure the finished transmitter into a dummy load, and do not go on the air with a rig
          that fails. The operator answers for the station.
        </Caution>
      </Section>
    </SheetFrame>
  );
}
