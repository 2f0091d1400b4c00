import { Section } from '../../design/Section.tsx';
import type { YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { useAnswer } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Write } from '../bound/Write.tsx';
import { BuildThem } from './BuildThem.tsx';
import { EnvelopePicture } from './EnvelopePicture.tsx';
import { Failures } from './Failures.tsx';
import { Histograms } from './Histograms.tsx';
import { MaskEntries } from './MaskEntries.tsx';
import { PartsThatCount } from './PartsThatCount.tsx';
import { SpreadEntries } from './SpreadEntries.tsx';
import { WhatHelps } from './WhatHelps.tsx';
import { YieldFigure } from './YieldFigure.tsx';

/** Thousands of builds of the filter as it stands: how often it comes out, and what to buy better. */
export function YieldLeaf() {
  const answer = useAnswer<YieldAnswer>('yield');
  const chosen = useValue<string>('yield.basis') === 'chosen';
  return (
    <SheetFrame
      stage="yield"
      main={<YieldFigure />}
      lead={
        <>
          <Write of="yield.builds" /> filters, each with capacitors of{' '}
          <Write of="yield.tolerance" /> and crystals that{' '}
          {chosen ? (
            <>
              are known to <Write of="yield.measuring" />
            </>
          ) : (
            <>
              lie <Write of="yield.spread" /> apart
            </>
          )}
          : how many come out as they should?
        </>
      }
    >
      <Section title="What it must keep to">
        <MaskEntries />
        <BuildThem />
        {answer && <Failures answer={answer} />}
      </Section>
      {answer && (
        <Section>
          <EnvelopePicture answer={answer} part="whole" turn={1} />
          <EnvelopePicture answer={answer} part="passband" turn={2} />
        </Section>
      )}
      <SpreadEntries />
      {answer && (
        <>
          <Section title="How the figures come out">
            <Histograms answer={answer} turn={3} />
          </Section>
          <WhatHelps answer={answer} />
          <PartsThatCount answer={answer} />
        </>
      )}
    </SheetFrame>
  );
}
