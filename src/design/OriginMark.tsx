import type { Origin } from './marks.ts';
import { words } from './words.ts';

/** Inked, pencilled, worked out (=) or read off a meter: one small stroke each. */
const strokes: Readonly<Record<Origin, string>> = {
  typed: 'M1 8h12',
  typical: 'M1 8h3M6 8h3M11 8h2',
  worked: 'M2 5.5h10M2 10h10',
  measured: 'M1.5 11a5.5 5.5 0 0 1 11 0M7 11l3.2-5.4',
};

/** Says where a value came from, by word and stroke. */
export function OriginMark({ of, quiet = false }: { of: Origin; quiet?: boolean }) {
  return (
    <span className={`origin origin--${of}`} title={words.origin[of]}>
      <svg viewBox="0 0 14 14" aria-hidden="true">
        <path d={strokes[of]} />
      </svg>
      <span className={quiet ? 'unseen' : 'origin__word'}>{words.originShort[of]}</span>
    </span>
  );
}
