import { quantity } from '../../fields/declare.ts';

/** What a sweep of the filter should show. */
export const figureResults = {
  width3: quantity({
    label: 'Width at −3 dB',
    symbol: 'B_3',
    unit: 'Hz',
    digits: 4,
    help: 'Between the outermost points 3 dB below the best one, with all losses and the parts really fitted.',
  }),
  loss: quantity({
    label: 'Loss',
    symbol: 'A_best',
    unit: 'dB',
    digits: 3,
    help: 'At the best point of the passband, against a direct match of source and load.',
  }),
  rippleFound: quantity({
    label: 'Ripple',
    symbol: 'A_rip',
    unit: 'dB',
    digits: 4,
    help: 'From the best point down to the deepest dip between two humps; none where there is one hump.',
  }),
  peak: quantity({
    label: 'Best point',
    symbol: 'f_peak',
    unit: 'Hz',
    digits: 8,
    help: 'The frequency that is passed best.',
  }),
  centre: quantity({
    label: 'Middle of the passband',
    symbol: 'f_mid',
    unit: 'Hz',
    digits: 8,
    help: 'Half-way between the −3 dB points.',
  }),
  low3: edge('f_3lo', 'Lower −3 dB point'),
  high3: edge('f_3hi', 'Upper −3 dB point'),
  low6: edge('f_6lo', 'Lower −6 dB point'),
  high6: edge('f_6hi', 'Upper −6 dB point'),
  low20: edge('f_20lo', 'Lower −20 dB point'),
  high20: edge('f_20hi', 'Upper −20 dB point'),
  low60: edge('f_60lo', 'Lower −60 dB point'),
  high60: edge('f_60hi', 'Upper −60 dB point'),
  width6: width('B_6', 'Width at −6 dB', 'The width that receivers are rated by.'),
  width20: width('B_20', 'Width at −20 dB', 'Where the carrier is commonly put.'),
  width60: width(
    'B_60',
    'Width at −60 dB',
    'Blank where the filter does not get that far down near its passband.',
  ),
  shape: quantity({
    label: 'Shape factor 60:6 dB',
    symbol: 's_60',
    unit: '1',
    digits: 3,
    help: '4.3 is usual for four crystals, 2.4 for six, 1.8 for eight.',
  }),
  noiseBandwidth: quantity({
    label: 'Noise bandwidth',
    symbol: 'B_n',
    unit: 'Hz',
    digits: 4,
    help: 'The width of a square filter that lets as much noise through.',
  }),
  delayVariation: quantity({
    label: 'Delay variation',
    symbol: 'dtau',
    unit: 's',
    digits: 3,
    help: 'Between the slowest and the fastest tone within the −3 dB points. Speech bears a few milliseconds.',
  }),
  returnLoss: quantity({
    label: 'Return loss',
    symbol: 'A_RL',
    unit: 'dB',
    digits: 3,
    help: 'At the filter’s input, the worst over the middle eight tenths of the passband.',
  }),
};

function edge<const S extends string>(symbol: S, label: string) {
  return quantity({
    label,
    symbol,
    unit: 'Hz',
    digits: 8,
    help: 'Against the best point, going outwards from the passband.',
  });
}

function width<const S extends string>(symbol: S, label: string, help: string) {
  return quantity({ label, symbol, unit: 'Hz', digits: 4, help });
}
