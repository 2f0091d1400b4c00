import { memo } from 'react';
import { Table } from '../../design/Table.tsx';
import type { TwoTones as Tones } from '../../engine/errands/power/powerAnswer.ts';
import { format } from '../../engine/quantity/format.ts';

/** Products of two equal tones, in both ways of saying. */
export const TwoTones = memo(function TwoTones({ of }: { of: Tones }) {
  const last = (orders: readonly number[]) =>
    orders.map((order, i) => ({
      key: String(order),
      cells: {
        order: `Order ${order}`,
        pep: format(of.belowPep[i] ?? Number.NaN, 'dB', 1),
        tone: format(of.belowTone[i] ?? Number.NaN, 'dB', 1),
      },
    }));
  return (
    <>
      <Table
        caption="Two equal tones that reach full power together"
        columns={[
          { key: 'order', label: 'Product', as: 'words' },
          { key: 'pep', label: 'Against PEP' },
          { key: 'tone', label: 'Against one tone' },
        ]}
        rows={last(of.orders)}
      />
      <p>
        The wattmeter shows {format(of.power, 'W', 3)} and the final draws{' '}
        {format(of.current, 'A', 3)}.
      </p>
    </>
  );
});
