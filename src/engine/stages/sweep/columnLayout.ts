/** How a text of columns is set out. */
export interface Layout {
  readonly separator: '\t' | ';' | ',' | ' ';
  /** The decimal sign is a comma. */
  readonly comma: boolean;
  /** Columns of most rows. */
  readonly count: number;
}

// In order of how little they can be mistaken: a comma between digits may be either.
const candidates: readonly Omit<Layout, 'count'>[] = [
  { separator: '\t', comma: false },
  { separator: '\t', comma: true },
  { separator: ';', comma: false },
  { separator: ';', comma: true },
  { separator: ',', comma: false },
  { separator: ' ', comma: false },
  { separator: ' ', comma: true },
];

/** Most lines that are tried for the layout. */
const TRIED = 400;

/** The layout in which most lines are rows of equally many numbers, two at least; null if none. */
export function layoutOf(lines: readonly string[]): Layout | null {
  const step = Math.max(1, Math.floor(lines.length / TRIED));
  const sample = lines.filter((line, i) => i % step === 0 && /\d/.test(line));
  let best: Layout | null = null;
  let most = 0;
  for (const candidate of candidates) {
    const counts = new Map<number, number>();
    for (const line of sample) {
      const cells = split(line, candidate);
      if (cells.length < 2 || !cells.every((cell) => cellOf(cell, candidate) !== null)) continue;
      counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
    }
    for (const [count, lines] of counts) {
      if (lines > most) {
        most = lines;
        best = { ...candidate, count };
      }
    }
  }
  return best;
}

/** The cells of a line; empty ones at its end are dropped. */
export function split(line: string, { separator }: Omit<Layout, 'count'>): string[] {
  const cells = separator === ' ' ? line.trim().split(/\s+/) : line.split(separator);
  while (cells.length > 0 && (cells.at(-1) ?? '').trim() === '') cells.pop();
  return cells.map((cell) => cell.trim());
}

/** The number in a cell, with the unit behind it; null where it is none. */
export function cellOf(
  cell: string,
  { comma }: Omit<Layout, 'count'>,
): { value: number; unit: string } | null {
  const bare = cell.replace(/^"|"$/g, '').replace(/[−–]/g, '-').trim();
  if (/^[-+]?(inf(inity)?|nan|-+)$/i.test(bare)) return { value: Number.NaN, unit: '' };
  const sign = comma ? ',' : '\\.';
  const shape = new RegExp(
    `^([-+]?)(\\d[\\d'’\\u2009]*(?:${sign}\\d*)?|${sign}\\d+)(?:[eE]([-+]?\\d{1,3}))?\\s*([a-zA-Zµμ°Ω%]*)$`,
  );
  const found = shape.exec(bare);
  if (found === null) return null;
  const [, minus = '', digits = '', power = '0', unit = ''] = found;
  const plain = digits.replace(/['’\u2009]/g, '').replace(',', '.');
  const value = Number(`${minus}${plain}e${power}`);
  return { value: Number.isFinite(value) ? value : Number.NaN, unit };
}
