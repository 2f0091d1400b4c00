import { format } from '../../quantity/format.ts';
import type { Together } from './together.ts';

/** Below this share of the direct power something eats the power, above that the reading is wrong. */
const LOW = 0.3;
const HIGH = 0.7;

/** What a reading of radio power over direct power says. */
export function sanity(overall: number): string {
  return `Expect ${format(overall, '%', 2)} at most. A reading over ${format(HIGH, '%', 2)} in class AB or B is a wrong reading: look at probe, load and its resistance. Under ${format(LOW, '%', 2)} look for mismatch, a lossy network or oscillation.`;
}

/** Standing current over the fundamental's peak that takes out the kink: common practice, no source. */
const LEAST = 0.03;
const MOST = 0.15;

/** How the standing current lies, for each transistor. */
export function standingAdvice(
  seen: { readonly supply: number },
  stage: { readonly quiescent: number; readonly fundamental: number },
  { sides, gang }: Together,
): string {
  const devices = sides * gang;
  const each = stage.quiescent / devices;
  const low = (LEAST * stage.fundamental) / gang;
  const high = (MOST * stage.fundamental) / gang;
  const there = `${format(each, 'A', 2)}${devices === 1 ? '' : ' in each transistor'}`;
  const range = `${format(low, 'A', 1)} to ${format(high, 'A', 1)}`;
  const heat = `It costs ${format(seen.supply * stage.quiescent, 'W', 2)} of heat while you pause.`;
  if (each < low) return `Weak syllables meet a kink at ${there}; ${range} take it out. ${heat}`;
  if (each > high) return `At ${there} it is more than the kink asks for, ${range}. ${heat}`;
  return `Right for speech at ${there}: ${range} take the kink out. ${heat}`;
}
