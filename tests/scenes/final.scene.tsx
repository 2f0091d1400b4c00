import { HarmonicChart } from '../../src/design/chart/HarmonicChart.tsx';
import { LoopChart } from '../../src/design/chart/LoopChart.tsx';

const angles = Array.from({ length: 73 }, (_, i) => (2 * Math.PI * i) / 72);
const swing = 11;
const volts = (lag: number) => angles.map((a) => 12 + swing * Math.cos(a + lag));
const amps = (lag: number) => angles.map((a) => Math.max(0, -0.7 * Math.cos(a + lag)));

export const name = 'Final';
export const scene = () => (
  <>
    <LoopChart
      title="Load line"
      summary="By hand straight, from the model a loop; both limits are near."
      line={{ x: volts(0), y: amps(0), label: 'by hand' }}
      loop={{ x: volts(0), y: amps(0.25), label: 'from the model' }}
      x={{ from: 0, to: 42, name: 'V', limit: { at: 40, label: 'limit 40 V' } }}
      y={{ from: 0, to: 0.95, name: 'A', limit: { at: 0.8, label: 'limit 800 mA' } }}
      uprights={[{ at: 12, label: 'supply' }]}
    />
    <LoopChart
      title="Load line, before the model has answered"
      summary="By hand alone."
      line={{ x: volts(0), y: amps(0), label: 'by hand' }}
      loop={null}
      x={{ from: 0, to: 25, name: 'V' }}
      y={{ from: 0, to: 0.8, name: 'A' }}
    />
    <HarmonicChart
      title="Harmonics, two answers"
      summary="Whole: from the model; dashed: by hand."
      frequencyUnit="MHz"
      limitLabel="limit −43 dBc"
      floor={-120}
      answers={['From the model', 'By hand']}
      harmonics={[
        { order: 2, frequency: '14.4', level: -57, limit: -43, outcome: 'holds', beside: -51 },
        { order: 3, frequency: '21.6', level: -39, limit: -43, outcome: 'fails', beside: -113 },
        { order: 4, frequency: '28.8', level: -160, limit: -43, outcome: 'holds', beside: -116 },
        { order: 5, frequency: '36.0', level: -160, limit: -43, outcome: 'holds', beside: null },
      ]}
    />
  </>
);
