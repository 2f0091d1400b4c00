/** How the windings of a transformer lie. */
export type WindingForm = 'over' | 'trifilar' | 'tapped' | 'halves';

/** Which end goes to which, by letters of the wires: A, B, C. */
export function joinsOf(form: WindingForm, shape: 'ring' | 'block'): string {
  const signs =
    shape === 'block' ? ' Cross: the wire goes away from you; point: it comes towards you.' : '';
  return `Dots are starts.${signs} ${ends[form]}`;
}

const ends: Readonly<Record<WindingForm, string>> = {
  over: 'Start of A to where the signal comes from, start of B to where it goes; both finishes to the cold side. Both dots then rise together.',
  trifilar: 'The finish of B goes to the start of C: that is the centre tap. A stands by itself.',
  halves:
    'The finish of B goes to the start of C: that is the centre tap, for the bias. Start of B and finish of C go to the bases.',
  tapped:
    'The finish of A goes to the start of B: that is the centre tap, for the supply. Start of A and finish of B go to the collectors; C, over them, to the output.',
};
