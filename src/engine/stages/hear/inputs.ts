import { choice, quantity } from '../../fields/declare.ts';

const edge = (label: string, symbol: string, range: readonly [number, number], help: string) =>
  quantity({ label, symbol, unit: 'Hz', range, default: null, digits: 3, help });

export const hearInputs = {
  ways: choice({
    label: 'Where the filter stands',
    options: {
      both: 'Sent and received with it',
      sends: 'Sent with it, received with a wide one',
      receives: 'Sent with a wide one, received with it',
    },
    default: 'both',
    help: 'What others hear of you, what you hear of others, or two rigs of a kind. The wide one is flat from 100 Hz to 3 kHz and has no other sideband.',
  }),
  noise: choice({
    label: 'Noise',
    options: { path: 'As over the path', none: 'None' },
    default: 'path',
    help: 'Without noise the filter alone is heard.',
  }),
  ratio: quantity({
    label: 'Signal over noise, typed',
    symbol: 'SNR_0',
    unit: 'dB',
    range: [-20, 60],
    default: null,
    typical: [0, 30],
    digits: 3,
    help: 'Peak envelope power over the noise in the filter’s noise bandwidth. Left blank: what Path says.',
  }),
  fading: choice({
    label: 'Fading',
    options: {
      path: 'As the path has it',
      none: 'None',
      quiet: 'Slow (0.1 Hz, 0.5 ms)',
      moderate: 'Middling (0.5 Hz, 1 ms)',
      disturbed: 'Quick (1 Hz, 2 ms)',
    },
    default: 'path',
    help: 'Two rays of equal strength, how fast each of them changes and how much later the second one comes. A sky wave has the middling kind, other ways none.',
    source: 'ITU-R F.1487, middle latitudes',
  }),
  offTune: quantity({
    label: 'Receiver off tune by',
    symbol: 'f_off',
    unit: 'Hz',
    range: [-300, 300],
    default: 0,
    typical: [-50, 50],
    digits: 3,
    help: 'The receiver’s carrier less the sender’s. Speech bears 50 Hz or so; by 200 Hz it is hard to follow.',
    source: 'common practice, no source',
  }),
  micLow: edge(
    'Microphone amplifier: low edge',
    'f_m1',
    [10, 1000],
    'Where its coupling capacitors take 3 dB. Left blank: no edge.',
  ),
  micHigh: edge(
    'Microphone amplifier: high edge',
    'f_m2',
    [1000, 20e3],
    'Where a capacitor across it takes 3 dB. Left blank: no edge.',
  ),
  final: choice({
    label: 'Final',
    options: {
      exact: 'With its own curve',
      knee: 'With a plain knee',
      straight: 'Straight to any height',
    },
    default: 'exact',
    help: 'What the crests of speech come to. Its own curve is that of the leaf Final: size and phase over the drive. Until it is worked, the plain knee stands in.',
  }),
  over: quantity({
    label: 'Crests over full drive',
    symbol: 'L_over',
    unit: 'dB',
    range: [-20, 20],
    default: 0,
    typical: [-3, 6],
    digits: 2,
    help: 'Nought: the loudest syllables just reach the peak envelope power. More is louder for a while, then only rough and wide.',
    source: 'common practice, no source',
  }),
  knee: quantity({
    label: 'Sharpness of the knee',
    symbol: 'p_k',
    unit: '1',
    range: [0.5, 10],
    default: 2,
    typical: [1, 3],
    digits: 2,
    help: 'One is soft, two to three is what transistors have, ten an edge.',
    source: 'C. Rapp, Proc. 2nd European Conf. on Satellite Communications, 1991',
  }),
  speakerLow: edge(
    'Receiver’s audio: low edge',
    'f_s1',
    [10, 1000],
    'Of coupling capacitors and loudspeaker together. Left blank: no edge.',
  ),
  speakerHigh: edge(
    'Receiver’s audio: high edge',
    'f_s2',
    [1000, 20e3],
    'Of the audio stages and the loudspeaker. Left blank: no edge.',
  ),
} as const;
