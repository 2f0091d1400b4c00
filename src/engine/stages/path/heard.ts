import { dbmOfWatts } from '../../quantity/power.ts';
import type { Gains } from './gains.ts';
import { balanceWords } from './pathWords.ts';
import type { PathSeen } from './seen.ts';
import { sReport } from './sMeter.ts';
import { requiredDensity, speechGrade } from './speechGrade.ts';
import type { Part } from './way.ts';

/**
 * What is heard here of the other station: the same way back, its power, and the noise here.
 *
 * @param loss of the path, dB
 * @param noise at the receiver's input here, dBm; null until Receive knows
 * @param snr with which this station is heard there, dB
 */
export function heardOf(
  seen: PathSeen,
  { here, there }: Gains,
  loss: number,
  noise: number | null,
  snr: number | null,
): Part {
  const heardReceived =
    dbmOfWatts(seen.farPower) - seen.farFeedLoss + there - loss + here - seen.feedLoss;
  const part: Part = { heardReceived, heardReport: sReport(heardReceived) };
  if (noise === null || snr === null || seen.bandwidth === null) return part;
  const heardSnr = heardReceived - noise;
  const density = heardSnr + 10 * Math.log10(seen.bandwidth);
  const required = requiredDensity[seen.route === 'skyWave' ? 'fading' : 'stable'];
  const balance = snr - heardSnr;
  return {
    ...part,
    heardSnr,
    heardSpeech: speechGrade(density, required),
    balance,
    balanceWords: balanceWords(balance),
  };
}
