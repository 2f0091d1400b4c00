import { useMemo, useState } from 'react';
import { AudioChart } from '../../src/design/chart/AudioChart.tsx';
import { HarmonicChart } from '../../src/design/chart/HarmonicChart.tsx';
import { PassbandStrip } from '../../src/design/chart/PassbandStrip.tsx';
import { ResponseChart } from '../../src/design/chart/ResponseChart.tsx';
import { Field } from '../../src/design/Field.tsx';
import { bandPass, drawn } from './curves.ts';

/** Four charts that all move with one figure: how long a key press takes is seen here. */
function Live() {
  const [text, setText] = useState('2400');
  const width = Math.min(4, Math.max(0.5, Number(text) / 1000 || 2.4));
  const curve = useMemo(() => bandPass(-5, 5, 1001, -0.4, width), [width]);
  const side = useMemo(
    () => drawn(0, 4000, 401, (f) => -24 - 26 * Math.log2(1 + f / (270 * width))),
    [width],
  );
  const carrier = { at: width / 2 - 0.1, label: 'carrier', direction: -1 } as const;
  const shared = {
    curve,
    xName: 'kHz from 7.1590 MHz',
    carrier,
    wanted: { from: -0.4 - width / 2, to: -0.4 + width / 2 },
    widths: [
      {
        level: -6,
        low: -0.4 - width / 2,
        high: -0.4 + width / 2,
        label: `${width.toFixed(2)} kHz`,
      },
    ],
    summary: `${width.toFixed(2)} kHz wide.`,
  };
  return (
    <>
      <Field
        id="live.width"
        label="Bandwidth"
        symbol="B"
        unit="Hz"
        text={text}
        onText={setText}
        onStep={(direction, coarse) =>
          setText(String(Number(text) + direction * (coarse ? 100 : 10)))
        }
        echo={`${width.toFixed(2)} kHz`}
      />
      <ResponseChart title="Response" domain={[-4, 4]} {...shared} />
      <PassbandStrip title="Passband, magnified" domain={[-2.5, 2]} {...shared} />
      <AudioChart
        title="The other sideband"
        summary=""
        curves={[{ ...side, label: 'other sideband', ink: 'other', nameAt: 1900, side: 'right' }]}
      />
      <HarmonicChart
        title="Harmonics"
        summary=""
        frequencyUnit="MHz"
        limitLabel="limit −43 dBc"
        harmonics={[2, 3, 4, 5, 6, 7].map((order) => ({
          order,
          frequency: (order * 7.16).toFixed(1),
          level: -25 - 8 * order - width,
          limit: -43,
          outcome: 'holds',
        }))}
      />
    </>
  );
}

export const name = 'Live';
export const scene = () => <Live />;
