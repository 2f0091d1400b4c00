import { useMemo } from 'react';
import { TransformerDrawing } from '../../design/drawing/TransformerDrawing.tsx';
import { TwoHoleDrawing } from '../../design/drawing/TwoHoleDrawing.tsx';
import { WindingCard, WindingCards } from '../../design/drawing/WindingCard.tsx';
import { wires } from '../../engine/data/wires.ts';
import { format } from '../../engine/quantity/format.ts';
import { formerTitled } from '../../engine/stages/windings/former.ts';
import { useValue } from '../../store/hooks.ts';

interface TransformerRow {
  readonly label: string;
  readonly does: string;
  readonly core: string;
  readonly form: string;
  readonly first: number;
  readonly second: number;
  readonly turns: number;
  readonly secondTurns: number;
  readonly inductance: number;
  readonly loss: number;
  readonly taken: number | null;
  readonly rise: number | null;
  readonly flux: number | null;
  readonly fluxLimit: number | null;
  readonly upper: number;
  readonly wire: string;
  readonly build: string;
  readonly joins: string;
  readonly instead: string | null;
}

/** Every transformer as a card: what it does, its picture, what to wind, how good it is. */
export function TransformerPlan() {
  const rows = useValue<readonly TransformerRow[]>('windings.transformers');
  const cards = useMemo(() => (rows ?? []).map(card), [rows]);
  return cards.length === 0 ? null : <WindingCards>{cards}</WindingCards>;
}

function card(row: TransformerRow) {
  return (
    <WindingCard
      key={row.label}
      title={row.label}
      does={row.does}
      build={`${row.build}; ${row.wire.replace(' ', '\u00a0')} wire.`}
      joins={row.instead === null ? row.joins : `${row.joins} In its place: ${row.instead}.`}
      facts={factsOf(row)}
      picture={<Picture of={row} />}
    />
  );
}

function Picture({ of: row }: { of: TransformerRow }) {
  const former = formerTitled(row.core);
  if (!former) return null;
  const tapped = row.form === 'tapped';
  const bundle = tapped || row.form === 'trifilar';
  const { turns: n, secondTurns: over } = row;
  if (former.shape === 'block') {
    const turns = tapped
      ? [n, n, over]
      : row.form === 'halves'
        ? [n, over, over]
        : bundle
          ? [n, n, n]
          : [n, over];
    const label = `A ${row.core} core from its end: ${turns.join(' and ')} turns go in at the left hole and come back at the right, starts dotted.`;
    return <TwoHoleDrawing label={label} turns={turns} />;
  }
  const wire = wires.find(({ title }) => title === row.wire);
  return (
    <TransformerDrawing
      label={`A ${row.core} core ${wordsOf[row.form]?.(n, over) ?? ''}, starts dotted.`}
      outer={former.outer}
      inner={former.inner}
      wire={wire?.overall ?? 0}
      turns={tapped ? [n, n] : bundle ? [n, n, n] : [n, over]}
      bundle={bundle}
      over={tapped ? over : null}
      paired={row.form === 'halves'}
      joined={tapped ? [0, 1] : bundle || row.form === 'halves' ? [1, 2] : null}
    />
  );
}

/** What the picture shows, by the way the windings lie. */
const wordsOf: Readonly<Record<string, (turns: number, over: number) => string>> = {
  over: (n, over) =>
    `with ${n} turns of the first winding, numbered, and ${over} of the second between them`,
  trifilar: (n) =>
    `with three wires of ${n} turns wound together; the finish of B is joined to the start of C`,
  halves: (n, over) =>
    `with ${n} turns of the first winding, numbered, and two wires of ${over} turns between them; the finish of B is joined to the start of C`,
  tapped: (n, over) =>
    `with two wires of ${n} turns wound together, the finish of A joined to the start of B, and ${over} turns over them`,
};

function factsOf(row: TransformerRow) {
  const facts = [
    {
      label: 'Works between',
      value: `${format(row.first, 'Ω', 3)} and ${format(row.second, 'Ω', 3)}`,
    },
    { label: 'A meter shows, first winding', value: format(row.inductance, 'H', 3) },
    { label: 'Loss by the core', value: format(row.loss, 'dB', 4) },
    { label: 'Good up to', value: format(row.upper, 'Hz', 2) },
  ];
  if (row.taken !== null && row.rise !== null) {
    facts.push({
      label: 'Heat, steady tone',
      value: `${format(row.taken, 'W', 2)}, +${format(row.rise, 'K', 2)}`,
    });
  }
  if (row.flux !== null && row.fluxLimit !== null) {
    facts.push({
      label: 'Flux, guideline',
      value: `${format(row.flux, 'T', 2)} of ${format(row.fluxLimit, 'T', 2)}`,
    });
  }
  return facts;
}
