import { memo } from 'react';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Table } from '../../design/Table.tsx';
import type { Assumption } from '../../engine/errands/power/powerAnswer.ts';
import { format } from '../../engine/quantity/format.ts';

/** What stands round the transistor in the model, to be held against what was built. */
export const WorkedWith = memo(function WorkedWith({ of }: { of: readonly Assumption[] }) {
  return (
    <Disclosure summary="What the model was worked with">
      <Table
        caption="Round the transistor"
        columns={[
          { key: 'what', label: 'What', as: 'words' },
          { key: 'value', label: 'Taken as' },
        ]}
        rows={of.map(({ what, value, unit }) => ({
          key: what,
          cells: { what, value: format(value, unit, 3) },
        }))}
      />
    </Disclosure>
  );
});
