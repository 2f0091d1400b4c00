import { EnvelopeChart } from '../../src/design/chart/EnvelopeChart.tsx';
import { HistogramChart } from '../../src/design/chart/HistogramChart.tsx';
import { RankBars } from '../../src/design/RankBars.tsx';
import { bandPass } from './curves.ts';

const off = (by: number) => bandPass(-1.5, 5, 201, 1.6 + by / 40, 2.4 + by / 20);
const { x, y: wanted } = off(0);
const [low, lowMiddle, middle, highMiddle, high] = [-3, -1.2, -0.2, 0.8, 2.4].map((by) =>
  off(by).y.map((gain) => gain + by / 15),
) as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

export const name = 'Many builds';
export const scene = () => (
  <>
    <EnvelopeChart
      title="Response of all builds"
      summary="Nine of ten are 2325 Hz to 2455 Hz wide at −3 dB."
      x={x}
      lines={[low, lowMiddle, middle, highMiddle, high]}
      wanted={wanted}
      xName="kHz from 7.2000 MHz"
      domain={[-1.5, 5]}
      floor={-80}
      uprights={[{ at: 3.2, label: 'carrier', kind: 'live' }]}
    />
    <div className="charts">
      <HistogramChart
        title="Width at −3 dB"
        summary="Half have more than 2390 Hz."
        from={2300}
        step={20}
        counts={[8, 40, 120, 210, 260, 190, 110, 50, 12]}
        total={1000}
        xName="Hz"
        unit="Hz"
        least={{ at: 2340, label: 'least 2340 Hz' }}
        wanted={{ at: 2400, label: 'designed 2400 Hz' }}
      />
    </div>
    <RankBars
      label="Which part counts"
      of={[
        {
          key: 'c3',
          label: 'Coupling capacitor 3',
          share: 1,
          figure: '21 %',
          note: '1 % more: −6.6 Hz',
        },
        { key: 'x2', label: 'Crystal 2, frequency', share: 0.4, figure: '8.4 %' },
      ]}
    />
  </>
);
