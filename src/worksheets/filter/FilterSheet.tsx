import { Disclosure } from '../../design/Disclosure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { CrystalsSection } from './CrystalsSection.tsx';
import { DelayPicture } from './DelayPicture.tsx';
import { EndsSection } from './EndsSection.tsx';
import { FilterPicture } from './FilterPicture.tsx';
import { LeakageSection } from './LeakageSection.tsx';
import { PartsSection } from './PartsSection.tsx';
import { ShapeSection } from './ShapeSection.tsx';
import { TakeAway } from './TakeAway.tsx';
import { useUnlikeEnds } from './useUnlikeEnds.ts';

/** The crystal ladder: what is asked for, the picture, the parts, and all that can be measured on it. */
export function FilterSheet() {
  const toGround = useValue<string>('filter.form') === 'shunt';
  const doubled = useValue<string>('filter.family') === 'doubled';
  const unlike = useUnlikeEnds();
  return (
    <SheetFrame
      stage="filter"
      main={<Result of="filter.width3" size="main" />}
      lead={
        <>
          A filter <Write of="filter.bandwidth" /> wide from <Write of="filter.crystals" />{' '}
          {doubled ? 'positions' : 'crystals'} loses <Read of="filter.loss" /> and wants{' '}
          <Read of="filter.ends" />{' '}
          {unlike ? (
            <>
              at its source and <Read of="filter.endsLoad" /> at its load.
            </>
          ) : (
            'at both ends.'
          )}
        </>
      }
    >
      <ShapeSection />
      <Section>
        <FilterPicture />
      </Section>
      <CrystalsSection />
      <PartsSection />
      <EndsSection />
      <LeakageSection />
      <Section title="What a sweep should show">
        <Figures>
          <Result of="filter.width6" />
          <Result of="filter.width20" />
          <Result of="filter.width60" />
          <Result of="filter.shape" />
          <Result of="filter.centre" />
          <Result of="filter.peak" />
          <Result of="filter.noiseBandwidth" />
          <Result of="filter.delayVariation" />
        </Figures>
        <DelayPicture />
        <Disclosure summary="Every edge">
          <Figures>
            <Result of="filter.low3" size="small" />
            <Result of="filter.high3" size="small" />
            <Result of="filter.low6" size="small" />
            <Result of="filter.high6" size="small" />
            <Result of="filter.low20" size="small" />
            <Result of="filter.high20" size="small" />
            <Result of="filter.low60" size="small" />
            <Result of="filter.high60" size="small" />
          </Figures>
        </Disclosure>
      </Section>
      <Section
        title="Is the Q enough?"
        margin={
          <Note>
            <p>
              Twenty times the centre frequency over the width is comfortable, ten usable, seven
              poor: below that the corners are gone and the filter only costs level.
            </p>
          </Note>
        }
      >
        <Figures>
          <Result of="filter.qRatio" />
          <Result of="filter.rounding" />
          <Result of="filter.corners" />
        </Figures>
      </Section>
      <TakeAway />
      <Section title="Inside the sum">
        <Figures>
          <Result of="filter.crystalFs" size="small" />
          <Result of="filter.crystalLm" size="small" />
          <Result of="filter.crystalRm" size="small" />
          <Result of="filter.crystalC0" size="small" />
        </Figures>
        <Figures>
          {toGround ? (
            <Result of="filter.halfSusceptance" size="small" />
          ) : (
            <Result of="filter.halfSpan" size="small" />
          )}
          <Result of="filter.largestSum" size="small" />
          <Result of="filter.endQ" size="small" />
          {unlike && <Result of="filter.endQLoad" size="small" />}
          <Result of="filter.alignment" size="small" />
          <Result of="filter.reachLossless" size="small" />
        </Figures>
      </Section>
    </SheetFrame>
  );
}
