import { Section } from '../../design/Section.tsx';
import type { YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { useErrand } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { Errand } from '../bound/Errand.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Write } from '../bound/Write.tsx';
import { EnvelopePicture } from './EnvelopePicture.tsx';
import { Failures } from './Failures.tsx';
import { Histograms } from './Histograms.tsx';
import { MaskEntries } from './MaskEntries.tsx';
import { PartsThatCount } from './PartsThatCount.tsx';
import { SpreadEntries } from './SpreadEntries.tsx';
import { WhatHelps } from './WhatHelps.tsx';
import { YieldFigure } from './YieldFigure.tsx';

/** Pause after the last change before the builds are sent for, ms. */
const PAUSE = 350;

/** Thousands of builds of the filter as it stands: how often it comes out, and what to buy better. */
export function YieldLeaf() {
  const errand = useErrand<YieldAnswer>('yield', { auto: PAUSE });
  const builds = useValue<number>('yield.builds');
  const { answer } = errand;
  return (
    <SheetFrame
      stage="yield"
      main={<YieldFigure answer={answer} standing={errand.standing} />}
      lead={
        <>
          <Write of="yield.builds" /> filters, each with capacitors of{' '}
          <Write of="yield.tolerance" /> and crystals that lie <Write of="yield.spread" /> apart:
          how many come out as they should?
        </>
      }
    >
      <Section title="What it must keep to">
        <MaskEntries />
        <Errand
          of={errand}
          what={`${(builds ?? 0).toLocaleString('en').replaceAll(',', ' ')} builds`}
          run="Build them"
        />
        {answer && <Failures answer={answer} />}
      </Section>
      {answer && (
        <Section>
          <EnvelopePicture answer={answer} />
        </Section>
      )}
      <SpreadEntries />
      {answer && (
        <>
          <Section title="How the figures come out">
            <Histograms answer={answer} />
          </Section>
          <WhatHelps answer={answer} />
          <PartsThatCount answer={answer} />
        </>
      )}
    </SheetFrame>
  );
}
