import { Value } from './Value.tsx';
import { words } from './words.ts';

export interface MovedItem {
  key: string;
  label: string;
  was: string;
  now: string;
  href?: string;
}

interface MovedProps {
  /** What the user changed: "Bandwidth 2.40 → 2.20 kHz". */
  cause?: string | undefined;
  items: readonly MovedItem[];
  /** How many to show before "and n more". */
  most?: number;
}

/** What the last change moved, as a strip of before and after. */
export function Moved({ cause, items, most = 8 }: MovedProps) {
  const shown = items.slice(0, most);
  const rest = items.length - shown.length;
  return (
    <section className="moved" aria-label={words.movedTitle}>
      <p className="moved__cause">{cause ?? words.movedTitle}</p>
      {items.length === 0 ? (
        <p className="moved__none">{words.nothingMoved}</p>
      ) : (
        <ul className="moved__list">
          {shown.map((item) => (
            <li key={item.key}>
              <span className="moved__label">
                {item.href === undefined ? item.label : <a href={item.href}>{item.label}</a>}
              </span>
              <span className="moved__pair">
                <s>{item.was}</s> <Value of={item.now} />
              </span>
            </li>
          ))}
          {rest > 0 && <li className="moved__rest">{words.movedMore(rest)}</li>}
        </ul>
      )}
    </section>
  );
}
