export interface Stacked {
  key: string;
  label: string;
  /** The whole, ready to read. */
  figure: string;
  /** Parts from the left, in the order of `parts`; in one unit for all bars. */
  values: readonly number[];
}

interface StackBarsProps {
  label: string;
  /** Names of the parts, in order; the same in every bar. */
  parts: readonly string[];
  of: readonly Stacked[];
}

/** How many looks there are for parts; further ones begin again. */
const LOOKS = 6;

/** Bars of parts laid end to end, all to one scale, with a key. */
export function StackBars({ label, parts, of }: StackBarsProps) {
  const most = Math.max(...of.map(({ values }) => values.reduce((sum, v) => sum + v, 0)), 1e-30);
  return (
    <figure className="stack" aria-label={label}>
      <ol className="stack__bars">
        {of.map(({ key, label: name, figure, values }) => (
          <li key={key} className="stack__one">
            <span className="stack__name">{name}</span>
            <span className="stack__bar" aria-hidden="true">
              {values.map((value, i) => (
                <span
                  key={parts[i]}
                  data-look={i % LOOKS}
                  style={{ inlineSize: `${((100 * value) / most).toFixed(2)}%` }}
                />
              ))}
            </span>
            <span className="stack__figure">{figure}</span>
          </li>
        ))}
      </ol>
      <figcaption className="stack__key">
        {parts.map((part, i) => (
          <span key={part} data-look={i % LOOKS}>
            {part}
          </span>
        ))}
      </figcaption>
    </figure>
  );
}
