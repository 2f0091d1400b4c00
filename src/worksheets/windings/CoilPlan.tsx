import { useMemo } from 'react';
import { ToroidDrawing } from '../../design/drawing/ToroidDrawing.tsx';
import { WindingCard, WindingCards } from '../../design/drawing/WindingCard.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { listed } from './listed.ts';
import { useCores } from './useCores.ts';

interface CoilRow {
  readonly label: string | null;
  readonly core: string;
  readonly l: number;
  readonly turns: number;
  readonly overall: number;
  readonly lAt: number;
  readonly lBelow: number;
  readonly lAbove: number;
  readonly lLow: number;
  readonly lHigh: number;
  readonly share: number;
  readonly dip: number;
  readonly q: number;
  readonly flux: number | null;
  readonly fluxLimit: number | null;
  readonly build: string;
}

/** Every tuned coil as a card to act on, with its turns to count. Coils that are alike stand together. */
export function CoilPlan() {
  const rows = useValue<readonly CoilRow[]>('windings.coils');
  const test = useValue<number>('windings.testCapacitor');
  const coreOf = useCores();
  const cards = useMemo(() => {
    const alike = new Map<string, CoilRow[]>();
    for (const row of rows ?? []) {
      const same = `${row.build} ${row.l.toPrecision(4)}`;
      alike.set(same, [...(alike.get(same) ?? []), row]);
    }
    return [...alike.values()].flatMap((same) => {
      const [row] = same;
      if (!row) return [];
      const names = listed(same.map(({ label }) => label ?? ''));
      const size = coreOf(row.core)?.size;
      return [
        <WindingCard
          key={names}
          title={same.length > 1 ? `${names}, alike` : names}
          does={`${format(row.l, 'H', 4)} wanted.`}
          build={`${row.build.replaceAll(' mm', '\u00a0mm')}.`}
          facts={factsOf(row, test)}
          picture={
            size && (
              <ToroidDrawing
                label={`A ${row.core} core with ${row.turns} turns, numbered; the wire goes down through the hole at each.`}
                outer={size.outer}
                inner={size.inner}
                wire={row.overall}
                turns={[row.turns]}
                share={row.share}
                told
              />
            )
          }
        />,
      ];
    });
  }, [rows, test, coreOf]);
  return cards.length === 0 ? null : <WindingCards>{cards}</WindingCards>;
}

function factsOf(row: CoilRow, test: number | null) {
  const h = (value: number) => format(value, 'H', 3);
  const facts = [
    { label: 'Spread out, a nominal core makes', value: h(row.lAt) },
    { label: 'Cores differ: a meter shows', value: `${h(row.lLow)} to ${h(row.lHigh)}` },
    { label: 'One turn less, one more', value: `${h(row.lBelow)}, ${h(row.lAbove)}` },
    {
      label: `With ${format(test ?? Number.NaN, 'F', 3)} across, right at`,
      value: format(row.dip, 'Hz', 4),
    },
    { label: 'Q, estimated', value: format(row.q, '1', 2) },
  ];
  if (row.flux !== null && row.fluxLimit !== null) {
    facts.push({
      label: 'Flux, guideline',
      value: `${format(row.flux, 'T', 2)} of ${format(row.fluxLimit, 'T', 2)}`,
    });
  }
  return facts;
}
