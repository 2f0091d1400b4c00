import { feedLines } from '../../data/feedLines.ts';
import { choice, quantity } from '../../fields/declare.ts';

const kinds = {
  rg174: feedLines.rg174.name,
  rg58: feedLines.rg58.name,
  rg8x: feedLines.rg8x.name,
  rg213: feedLines.rg213.name,
  ribbon: feedLines.ribbon.name,
  window: feedLines.window.name,
  open: feedLines.open.name,
} as const;

const line = (label: string) =>
  choice({
    label,
    options: { known: 'Its loss is known', ...kinds },
    default: 'known',
    help: 'Dry and new. Rain on ribbon takes several times as much, and old coax half as much again.',
    source: 'makers’ data sheets and handbook tables (from memory)',
  });

const long = (label: string, symbol: string, standard: number) =>
  quantity({
    label,
    symbol,
    unit: 'm',
    range: [0, 300],
    default: standard,
    typical: [3, 40],
    digits: 3,
    help: 'From the rig or its tuner to the antenna.',
  });

const swr = (label: string, symbol: string) =>
  quantity({
    label,
    symbol,
    unit: '1',
    range: [1, 100],
    default: null,
    typical: [1, 5],
    digits: 2,
    help: 'Measured at the antenna’s own end. Left blank, it follows from the antenna’s resistance and the line’s, or is 1 where that is not known.',
  });

const known = (label: string, symbol: string, help: string) =>
  quantity({
    label,
    symbol,
    unit: 'dB',
    range: [0, 20],
    default: 0.5,
    typical: [0, 2],
    digits: 3,
    help,
  });

/** What the user may say of the feed lines. */
export const feedInputs = {
  line: line('Feed line here'),
  knownLoss: known(
    'Feed line loss here',
    'A_t0',
    'Between the rig and the antenna, tuner included. It can be worked out from the line’s kind and length.',
  ),
  length: long('Length here', 'l_h', 15),
  swr: swr('SWR at the antenna here', 'S_a'),
  farLine: line('Feed line there'),
  farKnownLoss: known(
    'Feed line loss there',
    'A_r0',
    'It takes of their power on the way back. On receive it takes signal and band noise alike, and hurts only where the receiver sets the limit.',
  ),
  farLength: long('Length there', 'l_f', 15),
  farSwr: swr('SWR at the antenna there', 'S_b'),
} as const;

export const lineKinds = kinds;
