import { AudioChart } from '../../src/design/chart/AudioChart.tsx';
import { DistanceChart } from '../../src/design/chart/DistanceChart.tsx';
import { HarmonicChart } from '../../src/design/chart/HarmonicChart.tsx';
import { LevelChart } from '../../src/design/chart/LevelChart.tsx';
import { PassbandStrip } from '../../src/design/chart/PassbandStrip.tsx';
import { ResponseChart } from '../../src/design/chart/ResponseChart.tsx';
import { bandPass, drawn } from './curves.ts';

const curve = bandPass(-5, 5, 1001, -0.4, 2.5);
const reference = { ...bandPass(-5, 5, 401, -0.3, 3.1), label: 'before' };
const carrier = { at: 1.12, label: 'carrier 7.16012 MHz', direction: -1 } as const;
const rules = [
  { at: 1.05, label: '20 dB down: 38 dB at 300 Hz' },
  { at: 1.16, label: '300 Hz outside: 41 dB' },
];
const widths = [
  { level: -6, low: -1.63, high: 0.82, label: '2.45 kHz' },
  { level: -60, low: -3.2, high: 2.16, label: '5.36 kHz' },
  { level: -20, low: -1.86, high: 1.04, label: '2.90 kHz' },
  { level: -3, low: -1.55, high: 0.74, label: '2.29 kHz' },
];

export const response = (
  <ResponseChart
    title="Response"
    summary="2.45 kHz wide at −6 dB, 5.36 kHz at −60 dB; the carrier lies 22 dB down the upper skirt."
    curve={curve}
    reference={reference}
    xName="kHz from 7.1590 MHz"
    domain={[-4, 4]}
    wanted={{ from: -1.88, to: 0.82, label: 'wanted sideband' }}
    opposite={{ from: 1.42, to: 4, label: 'other sideband' }}
    carrier={carrier}
    rules={rules}
    widths={widths}
  />
);

const upper = bandPass(-5, 5, 1001, 0.2, 2.6);

export const upperSideband = (
  <ResponseChart
    title="Response, carrier below"
    summary="2.55 kHz wide at −6 dB; the carrier lies 12 dB down the shallow lower skirt."
    curve={upper}
    xName="kHz from 14.3171 MHz"
    domain={[-3.5, 4.5]}
    wanted={{ from: -1.1, to: 1.6, label: 'wanted sideband' }}
    opposite={{ from: -3.5, to: -1.7, label: 'other sideband' }}
    carrier={{ at: -1.4, label: 'carrier 14.31570 MHz', direction: 1 }}
    rules={[{ at: -1.62, label: '20 dB down: 41 dB at 300 Hz' }]}
    widths={[
      { level: -6, low: -1.1, high: 1.45, label: '2.55 kHz' },
      { level: -60, low: -2.9, high: 2.9, label: '5.80 kHz' },
    ]}
  />
);

export const strip = (
  <PassbandStrip
    title="Passband, magnified"
    summary="0.35 dB of ripple; best point −1.8 dB."
    curve={curve}
    reference={reference}
    xName="kHz from 7.1590 MHz"
    domain={[-2, 1.5]}
    carrier={{ ...carrier, label: 'carrier' }}
    widths={widths}
  />
);

export const harmonics = (
  <HarmonicChart
    title="Harmonics"
    summary="Worst is 3f: 1 dB under the limit; 2f is over it by 4 dB."
    frequencyUnit="MHz"
    limitLabel="limit −43 dBc"
    harmonics={[
      { order: 2, frequency: '14.3', level: -39.2, limit: -43, outcome: 'fails' },
      { order: 3, frequency: '21.5', level: -44.1, limit: -43, outcome: 'close' },
      { order: 4, frequency: '28.6', level: -58, limit: -43, outcome: 'holds' },
      { order: 5, frequency: '35.8', level: -61.5, limit: -43, outcome: 'holds' },
      { order: 6, frequency: '43.0', level: -70, limit: -43, outcome: 'holds' },
      { order: 7, frequency: '50.1', level: -74, limit: -43, outcome: 'holds' },
    ]}
  />
);

export const levels = (
  <LevelChart
    title="Levels from microphone to antenna"
    summary="The driver compresses first: 2 dB of headroom at full output."
    levels={[
      { key: 'mic', label: 'microphone', level: -52 },
      { key: 'amp', label: 'speech amplifier', level: -16, ceiling: 2 },
      { key: 'mod', label: 'modulator', level: -22, ceiling: -8 },
      { key: 'two', label: 'first amplifier', level: -7, ceiling: 8 },
      { key: 'filter', label: 'filter', level: -9 },
      { key: 'second', label: 'second amplifier', level: 6, ceiling: 12 },
      { key: 'driver', label: 'driver', level: 20, ceiling: 22 },
      { key: 'final', label: 'final', level: 33.4, ceiling: 37 },
      { key: 'antenna', label: 'antenna', level: 33 },
    ]}
  />
);

const sideband = drawn(0, 4000, 401, (f) => -24 - 26 * Math.log2(1 + f / 650));
const passed = drawn(
  0,
  4000,
  401,
  (f) => -1.8 - 20 * Math.log10(1 + (260 / (f + 1)) ** 4 + (f / 2650) ** 14),
);

export const audio = (
  <AudioChart
    title="The other sideband"
    summary="38 dB down at 300 Hz, 59 dB at 1 kHz."
    curves={[
      { ...passed, label: 'wanted sideband', ink: 'main', nameAt: 1400, side: 'below' },
      { ...sideband, label: 'other sideband', ink: 'other', nameAt: 1900, side: 'right' },
    ]}
    points={[
      { x: 300, y: sideband.y[30] ?? 0, label: '300 Hz  −38 dB' },
      { x: 1000, y: sideband.y[100] ?? 0, label: '1 kHz  −59 dB' },
    ]}
    floor={-100}
    bands={[{ from: 300, to: 2700, kind: 'wanted' }]}
  />
);

const strength = drawn(20, 2000, 400, (km) =>
  km < 90 ? 30 - km / 2 : km < 340 ? Number.NaN : 26 - 14 * Math.log2(km / 340),
);

export const distance = (
  <DistanceChart
    title="Signal to noise against distance"
    summary="Nothing between ground wave and 340 km; 10 dB is reached up to 750 km."
    upTo={2000}
    y={{ from: -40, to: 40, name: 'S/N, dB', unit: 'dB' }}
    curves={[{ ...strength, label: 'one F2 hop', ink: 'main', nameAt: 900, side: 'above' }]}
    bands={[{ from: 90, to: 340, kind: 'unwanted', label: 'skip zone' }]}
    uprights={[{ at: 600, label: 'target 600 km', kind: 'live' }]}
  />
);

export const name = 'Charts';
export const scene = () => (
  <>
    {response}
    {upperSideband}
    {strip}
    {harmonics}
    {levels}
    {audio}
    {distance}
  </>
);
