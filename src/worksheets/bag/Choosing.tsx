import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { ChooseAnswer } from '../../engine/errands/choose/answer.ts';
import { useErrand } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Errand } from '../bound/Errand.tsx';
import { ChoicePicture } from './ChoicePicture.tsx';
import { Offer } from './Offer.tsx';

/** Sends for a choice from the bag, and shows what it is worth. */
export function Choosing() {
  const errand = useErrand<ChooseAnswer>('choose');
  const n = useValue<number>('filter.crystals');
  const { answer } = errand;
  return (
    <Section
      title="Which of them, and where"
      margin={
        <Note title="What makes one choice better">
          <p>
            The response with the parts that will be fitted. One figure is made least, in dB: the
            ripple; a tenth of the fall over the middle seven tenths of the passband; a tenth for
            each per cent of width beyond the first that is gained or lost; a twentieth of the loss;
            a fiftieth for each tenth of the width that the crystals lie apart. A level shoulder
            counts as a dip. The ripple is never more than with the closest neighbours.
          </p>
          <p>
            The carrier gets what needs the least pulling of those that are left, unless only one
            that would go into the filter can be pulled there.
          </p>
        </Note>
      }
    >
      <Entry of="filter.aligning" form="row" />
      <Errand
        of={errand}
        what={`${n ?? ''} crystals in their order, and the carrier’s`}
        run="Choose for me"
      />
      {answer?.why != null && <p>{answer.why}</p>}
      {answer?.selection && (
        <>
          <Offer selection={answer.selection} />
          <ChoicePicture selection={answer.selection} />
        </>
      )}
    </Section>
  );
}
