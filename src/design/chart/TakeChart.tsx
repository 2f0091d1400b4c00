import { type RefObject, useState } from 'react';
import { Button } from '../Button.tsx';
import { Disclosure } from '../Disclosure.tsx';
import { fileName, saveBlob } from '../saveBlob.ts';
import { words } from '../words.ts';
import { type ChartWords, chartImage, svgText } from './chartImage.ts';
import { pngOf } from './pngOf.ts';

interface TakeChartProps extends ChartWords {
  /** The place that the chart is drawn in. */
  place: RefObject<HTMLDivElement | null>;
}

/** Saves a chart as a picture of its own: as a drawing, or in points. */
export function TakeChart({ place, ...said }: TakeChartProps) {
  const [failed, setFailed] = useState(false);
  const image = () => {
    const drawing = place.current?.querySelector('svg');
    return drawing ? chartImage(drawing, said) : null;
  };
  const saveDrawing = () => {
    const made = image();
    if (made === null) return setFailed(true);
    setFailed(false);
    saveBlob(fileName(said.title, 'svg'), new Blob([svgText(made)], { type: 'image/svg+xml' }));
  };
  const savePoints = () => {
    const made = image();
    if (made === null) return setFailed(true);
    setFailed(false);
    pngOf(made).then(
      (blob) => saveBlob(fileName(said.title, 'png'), blob),
      () => setFailed(true),
    );
  };
  return (
    <Disclosure summary={words.takeChart}>
      <p className="chart__take">
        <Button onPress={saveDrawing} label={words.asDrawing}>
          SVG
        </Button>
        <Button onPress={savePoints} label={words.asPoints}>
          PNG
        </Button>
      </p>
      <p aria-live="polite">{failed && words.notTaken}</p>
    </Disclosure>
  );
}
