import { BandsChart } from '../../src/design/chart/BandsChart.tsx';
import { SoundChart } from '../../src/design/chart/SoundChart.tsx';

const moments = 100;
const frequencies = 64;
// A tone that rises from 500 Hz to 3 kHz, and its first overtone.
const level = Uint8Array.from({ length: moments * frequencies }, (_, i) => {
  const m = Math.floor(i / frequencies);
  const k = i % frequencies;
  const tone = 8 + (40 * m) / moments;
  return Math.max(0, 255 - 60 * Math.abs(k - tone), Math.round(130 - 60 * Math.abs(k - 2 * tone)));
});
const worth = [1, 2, 4, 6, 8, 9, 9, 8, 6, 3];

export const name = 'Sound';
export const scene = () => (
  <>
    <SoundChart
      title="A tone that rises"
      summary="Time along, pitch upwards, the darker the stronger."
      moments={moments}
      frequencies={frequencies}
      step={62.5}
      seconds={10}
      level={level}
      xName="seconds"
      yName="Hz"
      position={() => 4}
    />
    <BandsChart
      title="Bands"
      summary="The upper half is lost."
      bands={worth.map((whole, i) => ({
        name: String(200 * (i + 1)),
        whole,
        part: i < 5 ? whole : whole / i,
      }))}
      xName="Hz"
      yName="%"
      whole="worth"
      part="heard"
    />
  </>
);
