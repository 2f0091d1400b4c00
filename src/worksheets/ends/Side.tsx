import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';

const paths = {
  source: {
    is: 'ends.sourceIs',
    own: 'ends.sourceOwn',
    ownX: 'ends.sourceOwnX',
    tuned: 'ends.sourceTuned',
    coil: 'ends.sourceCoil',
    wound: 'ends.sourceWound',
    by: 'ends.sourceBy',
    gives: 'ends.sourceGives',
    givesX: 'ends.sourceGivesX',
    seen: 'ends.sourceSeen',
    seenX: 'ends.sourceSeenX',
    ways: 'ends.sourceWays',
    advice: 'ends.sourceAdvice',
    wants: 'filter.ends',
  },
  load: {
    is: 'ends.loadIs',
    own: 'ends.loadOwn',
    ownX: 'ends.loadOwnX',
    tuned: 'ends.loadTuned',
    coil: 'ends.loadCoil',
    wound: 'ends.loadWound',
    by: 'ends.loadBy',
    gives: 'ends.loadGives',
    givesX: 'ends.loadGivesX',
    seen: 'ends.loadSeen',
    seenX: 'ends.loadSeenX',
    ways: 'ends.loadWays',
    advice: 'ends.loadAdvice',
    wants: 'filter.endsLoad',
  },
} as const;

/** One end: what stands there, the ways to match it, and what the filter then sees. */
export function Side({ of }: { of: 'source' | 'load' }) {
  const at = paths[of];
  const own = useValue<string>(at.is) === 'own';
  const gives = useValue<number>(at.gives);
  const beside = useValue<number>(at.givesX) ?? 0;
  const coil = useValue<number>(at.coil);
  const reactance = useValue<number>(at.seenX) ?? 0;
  const field = fieldAt(at.gives);
  return (
    <>
      <Entry of={at.is} form="row" />
      {own && (
        <Fields>
          <Entry of={at.own} />
          <Entry of={at.ownX} />
        </Fields>
      )}
      {beside < 0 && <Entry of={at.tuned} form="row" />}
      <Figures>
        <Result of={at.gives} />
        {(own || beside !== 0) && <Result of={at.givesX} size="small" />}
        {coil !== null && <Result of={at.coil} size="small" />}
        <Result of={at.seen} />
        {(own || reactance !== 0) && <Result of={at.seenX} size="small" />}
      </Figures>
      <Say of={at.advice} label="Advice" />
      <Entry of={at.by} form="list" />
      <Rows of={at.ways} caption="Parts" columns={['way', 'turns', 'l', 'c', 'series', 'shunt']} />
      <Rows
        of={at.ways}
        caption="What each does"
        narrow="scroll"
        columns={['way', 'seen', 'seenX', 'loss', 'q', 'band']}
      />
      <Disclosure summary="Matched for another figure than what is there">
        <Fields>
          <Entry
            of={at.wound}
            typical={field && gives !== null ? shown(field, gives) : undefined}
            typicalOrigin="worked"
          />
        </Fields>
      </Disclosure>
    </>
  );
}
