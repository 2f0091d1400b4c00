/** One step away from a device: in series with what is there so far, across it, or a transformer. */
export type Step =
  | { readonly place: 'series'; readonly r: number; readonly x: number }
  /** Conductance and susceptance, S. */
  | { readonly place: 'across'; readonly g: number; readonly b: number }
  /** Turns on the far side over turns on the device's side. */
  | { readonly place: 'transformer'; readonly ratio: number };

/** What is seen at the far end. */
export interface Seen {
  /** Ω. */
  readonly r: number;
  readonly x: number;
  /** Share of the power that passes, both ways: the rest heats resistors. */
  readonly passes: number;
}

/**
 * The impedance of a device through a few parts, and how much of the power they let through: of
 * what the device can give, if it is a source; of what goes in, if it is a load. The two are alike
 * for parts without direction.
 *
 * @param r resistance of the device, Ω, above zero
 * @param x its reactance, Ω
 * @param steps the parts in order, from the device outwards
 */
export function seenThrough(r: number, x: number, steps: readonly Step[]): Seen {
  let passes = 1;
  let zr = r;
  let zx = x;
  for (const step of steps) {
    if (step.place === 'series') {
      passes *= zr / (zr + step.r);
      zr += step.r;
      zx += step.x;
    } else if (step.place === 'across') {
      const size = zr * zr + zx * zx;
      const g = zr / size + step.g;
      const b = -zx / size + step.b;
      passes *= zr / size / g;
      const back = g * g + b * b;
      zr = g / back;
      zx = -b / back;
    } else {
      zr *= step.ratio ** 2;
      zx *= step.ratio ** 2;
    }
  }
  return { r: zr, x: zx, passes };
}
