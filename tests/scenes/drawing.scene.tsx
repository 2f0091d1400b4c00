import { Drawing, type DrawnBlock } from '../../src/design/drawing/Drawing.tsx';

export const blocks: readonly DrawnBlock[] = [
  { key: 'plan', label: 'Plan', figures: ['7.159 MHz LSB', '2 W, 12.0 V'], state: 'holds' },
  { key: 'quartz', label: 'Quartz', figures: ['Lm 30.0 mH', 'Qu 70 000'], state: 'holds' },
  {
    key: 'filter',
    label: 'Filter',
    figures: ['2.40 kHz', '−1.8 dB'],
    state: 'holds',
    moved: true,
  },
  {
    key: 'carrier',
    label: 'Carrier',
    figures: ['7.16012 MHz', '39.2 pF'],
    state: 'close',
    moved: true,
  },
  { key: 'transmit', label: 'Transmit', figures: ['+33.0 dBm', '0.31 A'], state: 'holds' },
  { key: 'output', label: 'Output', figures: ['worst −49 dBc', 'margin 6 dB'], state: 'holds' },
  { key: 'windings', label: 'Windings', figures: ['15 t, T50-2', '8 t trifilar'], state: 'holds' },
  { key: 'receive', label: 'Receive', figures: ['NF 14.2 dB', '0.4 µV'], state: 'holds' },
  { key: 'path', label: 'Path', figures: ['600 km', 'S7, 21 dB'], state: 'fails' },
  { key: 'bench', label: 'Bench', figures: ['3 of 9 read'], state: 'waits' },
];

export const name = 'Drawing';
export const scene = () => <Drawing blocks={blocks} current="filter" onChoose={() => undefined} />;
