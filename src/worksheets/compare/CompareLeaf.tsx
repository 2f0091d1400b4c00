import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { CompareAnswer } from '../../engine/errands/compare/compareAnswer.ts';
import { useAnswer } from '../../store/errands.ts';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import { Alternatives } from './Alternatives.tsx';
import { ComparedTable } from './ComparedTable.tsx';
import { DelayOverlay } from './DelayOverlay.tsx';
import { ResponseOverlay } from './ResponseOverlay.tsx';
import { StepOverlay } from './StepOverlay.tsx';
import { Unmet } from './Unmet.tsx';
import { VoiceOverlay } from './VoiceOverlay.tsx';
import { WorkThem } from './WorkThem.tsx';

/** Up to four filters side by side: the present one, and what might be made instead. */
export function CompareLeaf() {
  const answer = useAnswer<CompareAnswer>('compare');
  return (
    <SheetFrame
      stage="compare"
      main={<Result of="compare.filters" size="main" />}
      lead={
        <>
          Beside the present filter, <Read of="filter.bandwidth" /> wide from{' '}
          <Read of="filter.crystals" /> crystals: what would others do with the same crystals?
        </>
      }
    >
      <Section
        title="Which filters"
        margin={
          <Note title="What to try">
            <p>
              One crystal more or less, two hundred hertz more, a flat family instead of a rippled
              one. Change one thing at a time, and look at what it costs elsewhere.
            </p>
          </Note>
        }
      >
        <Alternatives />
        <Rows of="compare.described" />
        <WorkThem />
        {answer && <Unmet answer={answer} />}
      </Section>
      {answer && (
        <>
          <Section>
            <ResponseOverlay answer={answer} />
          </Section>
          <Section title="Side by side">
            <ComparedTable answer={answer} />
          </Section>
          <Section
            title="What is heard"
            margin={
              <Note>
                <p>
                  Each filter has its carrier where the rule of the Carrier sheet puts it. The other
                  sideband is what a listener on the far side of the carrier hears.
                </p>
              </Note>
            }
          >
            <VoiceOverlay answer={answer} />
          </Section>
          <Section
            title="In time"
            margin={
              <Note title="Overshoot and ring">
                <p>
                  A steep filter rings. Speech hides it; telegraphy and data do not. Bessel,
                  Gaussian and linear-phase families give up skirts for a clean step.
                </p>
              </Note>
            }
          >
            <StepOverlay answer={answer} />
            <DelayOverlay answer={answer} />
          </Section>
        </>
      )}
    </SheetFrame>
  );
}
