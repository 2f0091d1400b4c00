export interface Ranked {
  key: string;
  label: string;
  /** 0 to 1: the length of the bar. */
  share: number;
  /** The same, ready to read. */
  figure: string;
  /** What it means, in a few words. */
  note?: string | undefined;
}

interface RankBarsProps {
  label: string;
  of: readonly Ranked[];
}

/** Things in order of how much they count: name, bar, figure, and what that means. */
export function RankBars({ label, of }: RankBarsProps) {
  return (
    <ol className="rank" aria-label={label}>
      {of.map(({ key, label: name, share, figure, note }) => (
        <li key={key} className="rank__one">
          <span className="rank__name">{name}</span>
          <span className="rank__bar" aria-hidden="true">
            <span
              style={{ inlineSize: `${(100 * Math.max(0, Math.min(1, share))).toFixed(1)}%` }}
            />
          </span>
          <span className="rank__figure">{figure}</span>
          {note !== undefined && <span className="rank__note">{note}</span>}
        </li>
      ))}
    </ol>
  );
}
