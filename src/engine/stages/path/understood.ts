import { verdict } from './pathWords.ts';
import type { PathSeen } from './seen.ts';
import { requiredDensity, speechGrade } from './speechGrade.ts';
import type { Part } from './way.ts';

/** How well speech is understood at a ratio of signal over noise. */
export function understood(seen: PathSeen, snr: number, bandwidth: number): Part {
  const { spread } = seen;
  const required = requiredDensity[seen.route === 'skyWave' ? 'fading' : 'stable'];
  const density = snr + 10 * Math.log10(bandwidth);
  const speech = speechGrade(density, required);
  const speechLow = speechGrade(density - spread, required);
  const speechHigh = speechGrade(density + spread, required);
  return {
    snr,
    snrLow: snr - spread,
    snrHigh: snr + spread,
    density,
    grades: (['justUsable', 'marginal', 'good'] as const).map((grade) => ({
      grade,
      needed: required[grade],
      spare: density - required[grade],
    })),
    speech,
    speechLow,
    speechHigh,
    verdict: verdict(speechLow, speech, speechHigh),
  };
}
