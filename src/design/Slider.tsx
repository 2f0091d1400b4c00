import { useId } from 'react';
import './styles/slider.css';

export interface SliderMark {
  /** 0 … 1 along the track. */
  at: number;
  label: string;
}

interface SliderProps {
  id: string;
  label: string;
  /** 0 … 1 along the track. */
  position: number;
  /** What that is, ready to read and to be spoken: `193 Ω`. */
  says: string;
  onMove: (position: number) => void;
  /** Places to come back to. */
  marks?: readonly SliderMark[];
}

/** Steps over the whole track; the arrow keys take one, Page Up and Page Down ten. */
const STEPS = 240;

/** Something to drag, or to move with the arrow keys. Stands beside a field for the same figure. */
export function Slider({ id, label, position, says, onMove, marks = [] }: SliderProps) {
  const list = useId();
  return (
    <div className="slider">
      <label className="slider__head" htmlFor={id}>
        {label} <output htmlFor={id}>{says}</output>
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={STEPS}
        step={1}
        list={marks.length > 0 ? list : undefined}
        value={Math.round(Math.min(1, Math.max(0, position)) * STEPS)}
        aria-valuetext={says}
        onChange={(event) => onMove(Number(event.target.value) / STEPS)}
      />
      {marks.length > 0 && (
        <datalist id={list}>
          {marks.map(({ at }) => (
            <option key={at} value={Math.round(at * STEPS)} />
          ))}
        </datalist>
      )}
      <div className="slider__marks" aria-hidden="true">
        {marks.map(({ at, label: name }) => (
          <span key={name} style={{ left: `${100 * at}%` }}>
            {name}
          </span>
        ))}
      </div>
    </div>
  );
}
