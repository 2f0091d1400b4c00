import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { CrystalsSection } from './CrystalsSection.tsx';
import { DelayPicture } from './DelayPicture.tsx';
import { EndsSection } from './EndsSection.tsx';
import { FilterPicture } from './FilterPicture.tsx';
import { LeakageSection } from './LeakageSection.tsx';
import { PartsSection } from './PartsSection.tsx';

/** The crystal ladder: what is asked for, the picture, the parts, and all that can be measured on it. */
export function FilterSheet() {
  const family = useValue<string>('filter.family');
  return (
    <SheetFrame
      stage="filter"
      main={<Result of="filter.width3" size="main" />}
      lead={
        <>
          A filter <Write of="filter.bandwidth" /> wide from <Write of="filter.crystals" /> crystals
          loses <Read of="filter.loss" /> and wants <Read of="filter.ends" /> at both ends.
        </>
      }
    >
      <Section
        title="What it should be"
        margin={
          <Note title="Each crystal has a greatest bandwidth">
            <p>
              The nearer the passband comes to the parallel resonance, the less width a step of
              reactance buys. Beyond the greatest width no capacitors help; less holder capacitance,
              fewer poles or another frequency do.
            </p>
          </Note>
        }
      >
        <Fields>
          <Entry of="filter.bandwidth" />
          <Entry of="filter.crystals" />
          {family === 'chebyshev' && <Entry of="filter.ripple" />}
        </Fields>
        <Entry of="filter.family" form="row" />
        <Figures>
          <Result of="filter.reach" />
          <Result of="filter.loss" />
          <Result of="filter.rippleFound" />
        </Figures>
      </Section>
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
      <Section title="Inside the sum">
        <Figures>
          <Result of="filter.crystalFs" size="small" />
          <Result of="filter.crystalLm" size="small" />
          <Result of="filter.crystalRm" size="small" />
          <Result of="filter.crystalC0" size="small" />
        </Figures>
        <Figures>
          <Result of="filter.halfSpan" size="small" />
          <Result of="filter.largestSum" size="small" />
          <Result of="filter.endQ" size="small" />
          <Result of="filter.alignment" size="small" />
          <Result of="filter.reachLossless" size="small" />
        </Figures>
      </Section>
    </SheetFrame>
  );
}
