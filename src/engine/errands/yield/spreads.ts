/** How values lie about the one wanted: evenly between two ends, or heaped in the middle. */
export type Shape = 'even' | 'normal';

/** How far parts are from what they should be. */
export interface Spreads {
  /** Largest departure of a capacitor, as a fraction. */
  readonly capacitors: number;
  /** `normal`: half the tolerance is the standard deviation, and nothing lies outside of it. */
  readonly capacitorShape: Shape;
  /** Standard deviation of the crystals' series resonance, Hz. */
  readonly frequency: number;
  /** `even`: over a window √12 times the standard deviation. */
  readonly frequencyShape: Shape;
  /** Standard deviations of motional inductance, resistance and holder capacitance, as fractions. */
  readonly lm: number;
  readonly rm: number;
  readonly c0: number;
  /** Largest departure of the end resistances, as a fraction; spread as the capacitors are. */
  readonly ends: number;
}

/** Nothing is off. */
export const perfect: Spreads = {
  capacitors: 0,
  capacitorShape: 'even',
  frequency: 0,
  frequencyShape: 'normal',
  lm: 0,
  rm: 0,
  c0: 0,
  ends: 0,
};
