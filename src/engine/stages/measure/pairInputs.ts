import { quantity } from '../../fields/declare.ts';

const swept = (label: string, symbol: string, help: string) =>
  quantity({
    label,
    symbol,
    unit: 'Hz',
    range: [1e6, 40e6],
    default: null,
    digits: 8,
    help,
    reading: true,
  });

/** Series and parallel resonance of a sweep. */
export const pairInputs = {
  series: swept('Peak of the sweep', 'f_a', 'Series resonance.'),
  parallel: swept(
    'Dip of the sweep',
    'f_b',
    'Parallel resonance, some tens of kilohertz higher: shallow and noisy, so look with much averaging.',
  ),
} as const;
