import { Table } from '../../src/design/Table.tsx';

export const name = 'Table';
export const scene = () => (
  <Table
    caption="Capacitors of the ladder"
    narrow="stack"
    columns={[
      { key: 'name', label: 'Part', as: 'words' },
      { key: 'exact', label: 'Exact', unit: 'pF' },
      { key: 'chosen', label: 'From E12', unit: 'pF' },
      { key: 'costs', label: 'Moves width by', unit: 'Hz' },
      { key: 'note', label: 'Where', as: 'words' },
    ]}
    rows={[
      {
        key: '1',
        cells: { name: 'C12', exact: '86.4', chosen: '82', costs: '+21', note: 'first coupling' },
      },
      {
        key: '2',
        cells: {
          name: 'C23',
          exact: '112.0',
          chosen: '120',
          costs: '−14',
          note: 'second coupling',
        },
        moved: true,
      },
      {
        key: '3',
        cells: { name: 'C34', exact: '116.5', chosen: '120', costs: '−6', note: 'middle' },
      },
    ]}
  />
);
