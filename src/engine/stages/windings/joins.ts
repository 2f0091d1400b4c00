/** How the windings of a transformer lie. */
export type WindingForm = 'over' | 'trifilar' | 'tapped';

/** Which end goes to which, by letters of the wires: A, B, C. */
export function joinsOf(form: WindingForm): string {
  if (form === 'trifilar') {
    return 'Dots are starts. The finish of B goes to the start of C: that is the centre tap. A stands by itself.';
  }
  if (form === 'tapped') {
    return 'Dots are starts. The finish of A goes to the start of B: that is the centre tap, for the supply. C stands by itself.';
  }
  return 'Dots are starts. Start of A to where the signal comes from, start of B to where it goes; both finishes to the cold side. Both dots then rise together.';
}
