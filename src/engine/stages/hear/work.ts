import type { Problem, Work } from '../../fields/stage.ts';
import { dbOfPowerRatio } from '../../quantity/decibel.ts';
import type { hearFields } from './fields.ts';
import type { HearSeen } from './seen.ts';

/** The tone by which detuning is told, Hz. */
export const TOLD_BY = 1000;

/** What the voice meets on its way; the sound itself is made on an errand. */
export function workHear(seen: HearSeen): Work<typeof hearFields> {
  const { side, pathRatio, route, speechMean, noise, ratio, fading, offTune } = seen;
  const ratioUsed = noise === 'none' ? null : (ratio ?? pathRatio);
  const problems: Problem[] = [];
  if (noise === 'path' && ratioUsed === null) {
    problems.push({
      field: 'hear.ratio',
      weight: 'warns',
      says: 'Path has no signal over noise to give: no noise is heard.',
      try: 'Type a figure here, or see on Path what is missing.',
    });
  }
  return {
    results: {
      ratioUsed,
      meanRatio: ratioUsed === null ? null : ratioUsed + dbOfPowerRatio(speechMean),
      fadingUsed: fading === 'path' ? (route === 'skyWave' ? 'moderate' : 'none') : fading,
      toneAs: side === null ? null : TOLD_BY + (side === 'lower' ? offTune : -offTune),
    },
    problems,
    origins: { ratioUsed: ratio === null ? 'worked' : 'typed' },
  };
}
