import { lBandwidth } from '../../circuit/matching/lBandwidth.ts';
import { lMatch } from '../../circuit/matching/lMatch.ts';
import { turnsRatio } from '../../circuit/turnsRatio.ts';
import { ways } from './sideInputs.ts';
import { type Side, seenBy } from './sides.ts';
import { type WayKey, waySteps } from './waySteps.ts';

/** How far down the band of an L match is given, dB. */
export const MATCHED_TO = 0.1;

export const wayKeys = Object.keys(ways) as readonly WayKey[];

/** All ways of matching one side, with their parts and what they do. */
export function wayRows(side: Side) {
  const { wound, wants, centre } = side;
  const match = lMatch(wound, wants, centre);
  return wayKeys.map((way) => {
    const parts = way === 'lowpass' ? match?.lowpass : way === 'highpass' ? match?.highpass : null;
    const steps = waySteps(side, way);
    const resistors = way === 'resistor' || way === 'pad' ? steps : [];
    const series = resistors.find((step) => step.place === 'series');
    const across = resistors.find((step) => step.place === 'across');
    const seen = seenBy(side, way);
    return {
      way,
      turns: way === 'transformer' ? turnsOf(side) : null,
      l: parts?.l ?? null,
      c: parts?.c ?? null,
      series: series?.place === 'series' ? series.r : null,
      shunt: across?.place === 'across' ? 1 / across.g : null,
      q: parts && match ? match.q : null,
      band: parts && match ? lBandwidth(centre, match.q, MATCHED_TO) : null,
      loss: -10 * Math.log10(seen.passes),
      seen: seen.r,
      seenX: seen.x,
    };
  });
}

/** `2 : 3`: turns on the device's side to turns on the filter's. */
function turnsOf({ wound, wants }: Side): string {
  const { primary, secondary } = turnsRatio(wants / wound, false);
  return `${primary} : ${secondary}`;
}
