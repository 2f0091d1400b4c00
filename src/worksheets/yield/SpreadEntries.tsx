import { memo } from 'react';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** How far the parts are off. */
export const SpreadEntries = memo(function SpreadEntries() {
  const chosen = useValue<string>('yield.basis') === 'chosen';
  return (
    <Section
      title="How far the parts are off"
      margin={
        <>
          <Note title="The tenth">
            <p>
              Crystals within a tenth of the width do: such a window adds hardly a tenth of a
              decibel to the ripple. A fifth of the width adds a whole one.
            </p>
          </Note>
          <Note title="Five per cent will do">
            <p>
              Coupling capacitors of 5 % move the width by some fifty hertz and leave the ripple
              alone. Picking them by hand is seldom worth the evening.
            </p>
          </Note>
        </>
      }
    >
      <Fields>
        <Entry of="yield.tolerance" />
        {chosen ? <Entry of="yield.measuring" /> : <Entry of="yield.spread" />}
        <Entry of="yield.endTolerance" />
      </Fields>
      <Entry of="yield.frequencyShape" form="row" />
      <Figures>
        <Result of="yield.window" />
        <Result of="yield.windowShare" />
        <Result of="yield.basis" size="small" />
        <Result of="yield.spreadUsed" size="small" />
      </Figures>
      <Disclosure summary="Lm, Q, C0; shape of the tolerance; seed">
        <Fields>
          <Entry of="yield.lmSpread" />
          <Entry of="yield.rmSpread" />
          <Entry of="yield.c0Spread" />
          {chosen ? <Entry of="yield.spread" /> : <Entry of="yield.measuring" />}
        </Fields>
        <Entry of="yield.capacitorShape" form="row" />
        <Fields>
          <Entry of="yield.builds" />
          <Entry of="yield.seed" />
        </Fields>
        <Figures>
          <Result of="yield.sureness" size="small" />
          <Result of="yield.usualLeast" size="small" />
          <Result of="yield.usualMost" size="small" />
        </Figures>
      </Disclosure>
    </Section>
  );
});
