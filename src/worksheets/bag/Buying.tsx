import { useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figure } from '../../design/Figure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { BuyAnswer } from '../../engine/errands/choose/answer.ts';
import { format, formatTrimmed } from '../../engine/quantity/format.ts';
import { useErrand } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Errand } from '../bound/Errand.tsx';

/** Pause after the last change before lots are drawn, ms. */
const PAUSE = 400;

/** How many crystals to buy for a set that matches. */
export function Buying() {
  const errand = useErrand<BuyAnswer>('buy', { auto: PAUSE });
  const { answer } = errand;
  const crystals = useValue<number>('filter.crystals');
  const usual = answer === null ? undefined : format(answer.spread, 'Hz', 3);
  return (
    <Section
      title="How many to buy"
      margin={
        <Note title="Drawn, not guessed">
          <p>
            Lots are drawn crystal by crystal, thousands of times, until the set is among them: from
            the bag itself where it has eight or more, so that two humps stay two, else from a
            normal spread.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="bag.set" typical={crystals === null ? undefined : String(crystals)} />
        <Entry
          of="bag.window"
          typical={answer === null ? undefined : formatTrimmed(answer.window, 'Hz', 3)}
        />
        <Entry of="bag.confidence" />
        <Entry of="bag.lotSpread" typical={usual} />
      </Fields>
      <Errand of={errand} what={answer === null ? 'Lots' : drawnFrom(answer)} />
      {answer && (
        <>
          <Figures>
            <Figure
              label="Buy"
              value={answer.number === null ? null : String(answer.number)}
              waits={answer.number === null ? 'not even 300 would do' : undefined}
            />
            {[0.5, 0.9, 0.99].map((chance) => (
              <Figure
                key={chance}
                label={`for ${formatTrimmed(chance, '%', 2)}`}
                size="small"
                value={enough(answer, chance)}
              />
            ))}
          </Figures>
          <Chances answer={answer} />
        </>
      )}
      <Disclosure summary="Chance">
        <Fields>
          <Entry of="bag.seed" />
        </Fields>
      </Disclosure>
    </Section>
  );
}

const from = {
  bag: 'lots like this bag',
  typed: 'lots of the spread given',
  typical: 'lots of a typical spread',
} as const;

const drawnFrom = ({ trials, from: where, spread }: BuyAnswer) =>
  `${trials} ${from[where]}, ${format(spread, 'Hz', 3)} rms`;

function enough({ lots, chances }: BuyAnswer, chance: number): string {
  const at = chances.findIndex((one) => one >= chance);
  return at < 0 ? `over ${lots.length}` : String(lots[at]);
}

function Chances({ answer }: { answer: BuyAnswer }) {
  const drawn = useMemo(() => picture(answer), [answer]);
  return <CurveChart {...useDeferredValue(drawn)} />;
}

function picture({ set, window, confidence, lots, chances, number }: BuyAnswer): CurveChartProps {
  const last = lots.length;
  return {
    title: 'Chance of the set, by the size of the lot',
    summary: `${set} crystals within ${format(window, 'Hz', 3)}: ${
      number === null ? 'not even 300 are enough' : `${number} crystals hold them`
    } in ${formatTrimmed(confidence, '%', 3)} of all lots.`,
    curves: [
      {
        x: lots,
        y: chances.map((one) => 100 * one),
        label: 'chance',
        ink: 'main',
        nameAt: last * 0.7,
        side: 'below',
      },
    ],
    x: { from: 1, to: last, name: 'crystals in the lot', unit: 'crystals', step: 1 },
    y: { from: 0, to: 100, name: '%', unit: '%', ticks: [0, 25, 50, 75, 100], decimals: 0 },
    uprights: number === null ? [] : [{ at: number, label: `buy ${number}`, kind: 'live' }],
    tall: 12,
  };
}
