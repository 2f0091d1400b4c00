import { memo } from 'react';
import { Table } from '../../design/Table.tsx';
import type { Lack, Offered } from '../../engine/errands/suggest/suggestAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { TakeIt } from './TakeIt.tsx';

const lackWords: Readonly<Record<Lack, string>> = {
  margin: 'margin',
  fit: 'fit',
  loss: 'loss',
  power: 'power',
  parts: 'parts',
  match: 'match',
  family: 'kind',
};

const marginOf = ({ margin, order }: Offered) =>
  margin === null ? '–' : `${format(margin, 'dB', 3)} at ${order}f`;

/** Networks under each other, in order, each ready to be taken. */
export const OfferedTable = memo(function OfferedTable({
  caption,
  offered,
  lacking = false,
}: {
  caption: string;
  offered: readonly Offered[];
  /** Whether what each fails in has a column. */
  lacking?: boolean;
}) {
  if (offered.length === 0) return null;
  return (
    <Table
      caption={caption}
      narrow="stack"
      columns={[
        { key: 'what', label: 'Network', as: 'words' },
        { key: 'parts', label: 'Parts' },
        { key: 'coils', label: 'Windings' },
        { key: 'margin', label: 'Least margin' },
        { key: 'loss', label: 'Loss' },
        { key: 'hottest', label: 'Hottest part' },
        { key: 'fit', label: 'Return loss' },
        { key: 'power', label: 'Power' },
        ...(lacking ? [{ key: 'lacks', label: 'Fails in', as: 'words' as const }] : []),
      ]}
      rows={offered.map((one, i) => ({
        key: `${one.words} ${one.parts}`,
        cells: {
          what: (
            <>
              {lacking ? one.words : `${i + 1}. ${one.words}`} · <TakeIt offered={one} />
            </>
          ),
          parts: String(one.parts),
          coils: String(one.coils + one.transformers),
          margin: marginOf(one),
          loss: format(one.loss, 'dB', 4),
          hottest: one.hottest === '' ? '–' : `${one.hottest}, ${format(one.heat, 'W', 2)}`,
          fit: format(one.returnLoss, 'dB', 3),
          power: format(one.power, 'W', 3),
          lacks: one.lacks.map((lack) => lackWords[lack]).join(', '),
        },
      }))}
    />
  );
});
